import { rounded, scatterFrom } from '@/seed/readings'

/** Ten places that differ, and how one instrument reads them. */
interface StudyStory {
  readonly study: string
  readonly instrumentTag: string
  readonly places: string
  readonly thicknessesUm: readonly number[]
  /** How far readings of one place by one person scatter, and how much the people differ. */
  readonly repeatUm: number
  readonly peopleUm: number
  readonly start: number
}

const STUDIES: readonly StudyStory[] = [
  {
    study: 'tin-lead on track',
    instrumentTag: 'XF-01',
    places: 'land',
    thicknessesUm: [6.1, 7.4, 8, 8.6, 9.3, 9.9, 10.4, 11.2, 12.1, 13],
    repeatUm: 0.11,
    peopleUm: 0.1,
    start: 51,
  },
  {
    study: 'copper in holes, microsections',
    instrumentTag: 'MM-07',
    places: 'section',
    thicknessesUm: [23.8, 25.6, 27, 28.1, 29.2, 30.3, 31.5, 32.7, 34.4, 36.9],
    repeatUm: 0.2,
    peopleUm: 0.15,
    start: 52,
  },
]

/** What each person reads too much, in parts of how much the people differ. */
const PEOPLE = { 'Sunniva Brandt': 0, 'Quill Amaro': 1, 'Goran Eide': -1 } as const

/** Three people measure ten places three times each, with either thickness gauge. */
export const gaugeStudies = (): Record<string, string | number>[] => STUDIES.flatMap(readingsOfStudy)

function readingsOfStudy({ study, instrumentTag, places, thicknessesUm, ...spread }: StudyStory) {
  const scatter = scatterFrom(spread.start)
  return Object.entries(PEOPLE).flatMap(([appraiser, over]) =>
    thicknessesUm.flatMap((thicknessUm, part) =>
      [1, 2, 3].map((trial) => ({
        study,
        instrumentTag,
        part: `${places} ${part + 1}`,
        appraiser,
        trial,
        reading: rounded(thicknessUm + spread.peopleUm * over + spread.repeatUm * scatter(), 2),
      })),
    ),
  )
}
