import { minCountUpTo } from '@/shared/statistics/intervals/min-count'
import { isUsable, lotName, partKey, aboutLot } from '@/shared/records/lot-identity'
import type { Lot } from '@/shared/records/lot'
import { PLATING_PLACES } from '@/shared/methods/plating-thickness'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import type { Inputs } from '@/shared/rules/rule'
import { oneSidedIndexBound } from '@/shared/statistics/capability/one-sided-bound'
import { nestedSpread, type NestedSpread } from '@/shared/statistics/components/nested-spread'
import { platingOf, type PlatingReadings } from './plating-readings'
import { platingReads, specificationFrom } from './plating-reads'
import { platingWindow, hasWindow } from './plating-window'
import { countingReads } from '@/shared/lot-tests/counted-tests'
import type { About } from '@/shared/rules/finding'
import { scaled } from './tolerance-shown'
import { groupedBy } from '@/shared/grouped-by'

/** How far one supplier's plating of one deposit at one place keeps from its minimum. */
export interface PlatingIndex {
  readonly subject: string
  /** The deposit and the place, in words. */
  readonly where: string
  readonly about: About
  /** The lots whose readings are taken together. */
  readonly lots: readonly Lot[]
  readonly readings: number
  /** What there are several of: specimens in one lot, or lots. */
  readonly units: { readonly count: number; readonly of: 'specimens' | 'lots' }
  readonly minUm: number
  readonly result:
    | { readonly spread: NestedSpread; readonly index: number; readonly bound: number }
    | { readonly open: string }
}

/**
 * The index (mean − least) ÷ 3 s of every lot's plating that has a minimum, and over the lots of one
 * supplier where there are several, with its one-sided lower bound; open for one specimen or readings
 * all alike. The units are specimens, and over lots the lots: their readings are alike.
 * Units: µm, the index has none. The confidence is a fraction.
 */
export function platingIndexes(
  inputs: Inputs<typeof countingReads & typeof platingReads>,
  confidence: number,
): PlatingIndex[] {
  const specification = specificationFrom(inputs)
  const groups = inputs.lots.filter(isUsable).flatMap((lot) => platingOf(lot, inputs).groups)
  return pooled(groups).flatMap((series) => {
    const window = platingWindow(series[0]!, specification)
    if (!hasWindow(window)) return []
    const ofLots = series.map((one) => indexOf([one], window.minUm, confidence))
    return series.length === 1 ? ofLots : [...ofLots, indexOf(series, window.minUm, confidence)]
  })
}

/** The same for screens; none while something they read is not specified. */
export function platingIndexesOf(facts: Facts, confidence: number): PlatingIndex[] {
  const inputs = inputsOf({ ...countingReads, ...platingReads }, facts)
  return inputs ? platingIndexes(inputs, confidence) : []
}

/** One supplier's readings of one deposit at one place of one part, over his lots. */
const pooled = (groups: readonly PlatingReadings[]): PlatingReadings[][] => [
  ...groupedBy(groups, ({ lot, deposit, place }) =>
    [lot.kind, partKey(lot.part), partKey(lot.supplier), deposit, place].join('\n'),
  ).values(),
]

function indexOf(series: readonly PlatingReadings[], minUm: number, confidence: number): PlatingIndex {
  const { lot, deposit, place } = series[0]!
  const where = `${deposit}, ${PLATING_PLACES[place].label.toLowerCase()}`
  return {
    subject: series.length === 1 ? `${lotName(lot)}, ${where}` : `${lot.supplier}, ${lot.part}, ${where}`,
    where,
    about: {
      ...(series.length === 1 ? aboutLot(lot) : { supplier: lot.supplier, part: lot.part }),
      deposit,
      place,
    },
    lots: series.map((one) => one.lot),
    readings: series.flatMap(({ bySpecimen }) => bySpecimen.flat()).length,
    units:
      series.length === 1
        ? { count: series[0]!.bySpecimen.length, of: 'specimens' }
        : { count: series.length, of: 'lots' },
    minUm,
    result: resultOf(
      series.map(({ bySpecimen }) => bySpecimen),
      minUm,
      confidence,
    ),
  }
}

function resultOf(
  lots: readonly PlatingReadings['bySpecimen'][],
  minUm: number,
  confidence: number,
): PlatingIndex['result'] {
  const readings = lots.flat(2)
  if (!readings.every(Number.isFinite)) return { open: 'a reading is not a number.' }
  if (lots.length === 1 && lots[0]!.length < 2) {
    return { open: 'one specimen makes no index: the spread between specimens is not known.' }
  }
  const spread = nestedSpread(lots, confidence)
  if (!(spread.standardDeviation > 0))
    return { open: 'all readings are alike: the instrument is too coarse to show the spread.' }
  const index = (spread.mean - minUm) / (3 * spread.standardDeviation)
  return { spread, index, bound: oneSidedIndexBound(index, spread, confidence) }
}

/** More than anyone has: beyond it "more of them" is no advice. */
const MAX_UNITS = 10_000

/** How many such units would show the index to reach the least, with the same mean and spread; undefined where none would. */
export function unitsEnough(
  { units, result }: PlatingIndex,
  minIndex: number,
  confidence: number,
): number | undefined {
  if ('open' in result || !(result.index > minIndex)) return undefined
  const shows = (count: number): boolean =>
    oneSidedIndexBound(result.index, scaled(result.spread, units.count, count), confidence) >= minIndex
  return minCountUpTo(shows, { min: units.count + 1, guess: units.count * 2, max: MAX_UNITS })
}
