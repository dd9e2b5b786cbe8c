import { gaugeSpreadByRanges } from '@/shared/statistics/gauge/by-ranges'
import { gaugeSpreadByVariance, type GaugeSpreadByVariance } from '@/shared/statistics/gauge/by-variance'
import type { GaugeSpread, GaugeStudy } from '@/shared/statistics/gauge/study'
import { gaugeFigures, type GaugeFigures } from '@/shared/statistics/gauge/verdict-figures'
import type { RecordOf } from '@/shared/records/record-kinds'
import { groupedBy } from '@/shared/grouped-by'
import { memo } from '@/shared/memo'

export type GaugeReading = RecordOf<'gauge-reading'>

/** What keeps a study from being worked out: too few of everything, a reading twice, readings missing, none that differ. */
export type GaugeFault = 'small' | 'twice' | 'gaps' | 'alike'

/** One study with its spreads by both computations, or why it cannot be computed. */
export interface StudiedGauge {
  readonly study: string
  readonly instrumentTag: string
  readonly readings: number
  readonly result:
    | {
        readonly parts: number
        readonly appraisers: number
        readonly trials: number
        /** Who and what, in the order of `crossed`. */
        readonly names: { readonly parts: readonly string[]; readonly appraisers: readonly string[] }
        readonly crossed: GaugeStudy
        readonly byVariance: GaugeSpreadByVariance
        readonly byRanges: GaugeSpread | undefined
        readonly figures: GaugeFigures
      }
    | { readonly incomplete: string; readonly fault: GaugeFault }
}

/** Every study in a list of readings, in the order their first readings were entered. */
export const studiedGauges = memo((readings: readonly GaugeReading[]): readonly StudiedGauge[] => {
  const byStudy = groupedBy(readings, ({ study, instrumentTag }) => `${study}\n${instrumentTag}`)
  return [...byStudy.values()].map((own) => {
    const { study: name, instrumentTag } = own[0]!
    return { study: name, instrumentTag, readings: own.length, result: resultOf(own) }
  })
})

function resultOf(own: readonly GaugeReading[]): StudiedGauge['result'] {
  const parts = namesOf(own.map(({ part }) => part))
  const appraisers = namesOf(own.map(({ appraiser }) => appraiser))
  const trials = [...new Set(own.map(({ trial }) => trial))]
  if (parts.length < 2 || appraisers.length < 2 || trials.length < 2) {
    return { fault: 'small', incomplete: 'a study needs at least two parts, two people and two trials' }
  }
  const cells = new Map(own.map((one) => [`${one.part}\n${one.appraiser}\n${one.trial}`, one.reading]))
  const expected = parts.length * appraisers.length * trials.length
  if (own.length !== cells.size)
    return { fault: 'twice', incomplete: 'a part, person and trial is entered twice' }
  if (cells.size !== expected) {
    return {
      fault: 'gaps',
      incomplete: `${expected - cells.size} of ${expected} readings are missing: every person measures every part equally often`,
    }
  }
  const crossed: GaugeStudy = parts.map((part) =>
    appraisers.map((appraiser) => trials.map((trial) => cells.get(`${part}\n${appraiser}\n${trial}`)!)),
  )
  const byVariance = gaugeSpreadByVariance(crossed)
  if (!(byVariance.total > 0))
    return {
      fault: 'alike',
      incomplete: 'all readings are alike: the instrument is too coarse for a study',
    }
  const small = Math.max(parts.length, appraisers.length, trials.length) <= 25
  return {
    parts: parts.length,
    appraisers: appraisers.length,
    trials: trials.length,
    names: { parts, appraisers },
    crossed,
    byVariance,
    byRanges: small ? gaugeSpreadByRanges(crossed) : undefined,
    figures: gaugeFigures(byVariance),
  }
}

/** Every name once, part 2 before part 10: rows entered together come back in any order. */
const counting = new Intl.Collator('en', { numeric: true })
const namesOf = (all: readonly string[]): string[] => [...new Set(all)].sort(counting.compare)

/** What is asked of a gauge. */
export interface GaugeDemand {
  readonly maxSharePct: number
  readonly minCategories: number
}

/** Tags of instruments that a complete study shows to be unfit, with the study's name. */
export function unfitGauges(
  readings: readonly GaugeReading[],
  { maxSharePct, minCategories }: GaugeDemand,
): ReadonlyMap<string, string> {
  const unfit = new Map<string, string>()
  for (const { study: name, instrumentTag, result } of studiedGauges(readings)) {
    if ('incomplete' in result) continue
    const { gaugeShareOfTotalPct, distinctCategories } = result.figures
    const isFit = gaugeShareOfTotalPct <= maxSharePct && distinctCategories >= minCategories
    if (!isFit) unfit.set(instrumentTag, name)
  }
  return unfit
}
