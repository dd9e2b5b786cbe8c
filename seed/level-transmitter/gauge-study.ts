import { rounded, scatterFrom } from '@/seed/readings'

/** Thicknesses of ten lands, thin to thick, in µm. */
const PARTS = [6.1, 7.4, 8, 8.6, 9.3, 9.9, 10.4, 11.2, 12.1, 13]
/** What each person reads too much. */
const PEOPLE = { 'Sunniva Brandt': 0, 'Quill Amaro': 0.1, 'Goran Eide': -0.1 } as const

/** Three people measure ten lands three times each with the X-ray gauge. */
export function gaugeStudy(): Record<string, string | number>[] {
  const scatter = scatterFrom(51)
  return Object.entries(PEOPLE).flatMap(([appraiser, over]) =>
    PARTS.flatMap((thicknessUm, part) =>
      [1, 2, 3].map((trial) => ({
        study: 'tin-lead on track',
        instrumentTag: 'XF-01',
        part: `land ${part + 1}`,
        appraiser,
        trial,
        reading: rounded(thicknessUm + over + 0.11 * scatter(), 2),
      })),
    ),
  )
}
