import { isUsable, lotName, partKey, aboutLot } from '@/shared/records/lot-identity'
import type { Lot } from '@/shared/records/lot'
import { PLATING_PLACES } from '@/shared/methods/plating-thickness'
import type { Inputs } from '@/shared/rules/rule'
import { cpkLowerBound } from '@/shared/statistics/capability/intervals'
import { mean, standardDeviation } from '@/shared/statistics/sample-moments'
import { platingOf, type PlatingReadings } from './plating-readings'
import { specificationFrom, type platingReads } from './plating-reads'
import { platingWindow, hasWindow } from './plating-window'
import { demandsFrom, type StandingInputs } from '@/shared/sampling/sampling-reads'
import type { About } from '@/shared/rules/finding'
import { groupedBy } from '@/shared/grouped-by'

/** Fewer readings than this leave an index anywhere between good and bad. */
export const FEWEST_READINGS = 10

/** How far one supplier's plating of one deposit at one place keeps from its minimum. */
export interface PlatingIndex {
  readonly subject: string
  /** The deposit and the place, in words. */
  readonly where: string
  readonly about: About
  /** The lots whose readings are taken together. */
  readonly lots: readonly Lot[]
  readonly readings: number
  readonly leastUm: number
  readonly result:
    | { readonly mean: number; readonly spread: number; readonly index: number; readonly bound: number }
    | { readonly open: string }
}

/**
 * The index (mean − least) ÷ 3 s of every series of plating readings that has a
 * minimum, with its one-sided lower bound; open where the readings are too few or all alike.
 * Units: µm, the index has none. The confidence is a fraction.
 */
export function platingIndexes(
  inputs: StandingInputs & Inputs<typeof platingReads>,
  confidence: number,
): PlatingIndex[] {
  const demands = demandsFrom(inputs)
  const specification = specificationFrom(inputs)
  const groups = inputs.lots.filter(isUsable).flatMap((lot) => platingOf(lot, demands).groups)
  return pooled(groups).flatMap((series) => {
    const window = platingWindow(series[0]!, specification)
    return !hasWindow(window) ? [] : [indexOf(series, window.leastUm, confidence)]
  })
}

/** One supplier's readings of one deposit at one place of one part, over his lots. */
const pooled = (groups: readonly PlatingReadings[]): PlatingReadings[][] => [
  ...groupedBy(groups, ({ lot, deposit, place }) =>
    [lot.kind, partKey(lot.part), partKey(lot.supplier), deposit, place].join('\n'),
  ).values(),
]

function indexOf(series: readonly PlatingReadings[], leastUm: number, confidence: number): PlatingIndex {
  const { lot, deposit, place } = series[0]!
  const where = `${deposit}, ${PLATING_PLACES[place].label.toLowerCase()}`
  const readings = series.flatMap(({ thicknessesUm }) => thicknessesUm)
  return {
    subject: series.length === 1 ? `${lotName(lot)}, ${where}` : `${lot.supplier}, ${lot.part}, ${where}`,
    where,
    about: {
      ...(series.length === 1 ? aboutLot(lot) : { supplier: lot.supplier, part: lot.part }),
      deposit,
      place,
    },
    lots: series.map((one) => one.lot),
    readings: readings.length,
    leastUm,
    result: resultOf(readings, leastUm, confidence),
  }
}

function resultOf(readings: readonly number[], leastUm: number, confidence: number): PlatingIndex['result'] {
  if (readings.length < FEWEST_READINGS || !readings.every(Number.isFinite)) {
    return {
      open: `${readings.length} readings are too few for an index: at least ${FEWEST_READINGS} are wanted.`,
    }
  }
  const spread = standardDeviation(readings)
  if (!(spread > 0))
    return { open: 'all readings are alike: the instrument is too coarse to show the spread.' }
  const centre = mean(readings)
  const index = (centre - leastUm) / (3 * spread)
  const basis = { readings: readings.length, degreesOfFreedom: readings.length - 1 }
  return { mean: centre, spread, index, bound: cpkLowerBound(index, basis, confidence) }
}
