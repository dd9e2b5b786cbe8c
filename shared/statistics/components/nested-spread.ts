import { requireOpenFraction } from '../argument-checks'
import { fQuantile } from '../distributions/fisher-f'
import { requireReadings } from '../reading-checks'
import { mean, sumOfSquaredDeviations } from '../sample-moments'

/** Readings by specimen by lot. */
export type NestedReadings = readonly (readonly (readonly number[])[])[]

export type NestedLevel = 'lots' | 'specimens' | 'readings'

/** One source of spread: a mean square that estimates it together with what lies below it. */
export interface SpreadComponent {
  readonly level: NestedLevel
  /** Its share in the variance of one reading is this times the mean square. */
  readonly weight: number
  readonly meanSquare: number
  readonly degreesOfFreedom: number
}

/** The spread of single readings, and how many independent readings its estimate is worth. */
export interface NestedSpread {
  readonly mean: number
  readonly standardDeviation: number
  /** Outermost first; a level with one member in each group shows no spread of its own and is left out. */
  readonly components: readonly SpreadComponent[]
  /** So many independent readings would give a mean as sure; not whole. */
  readonly effectiveReadings: number
  /** Of the variance, by Satterthwaite; not whole. */
  readonly degreesOfFreedom: number
}

/**
 * Readings on one specimen are alike, and so are specimens of one lot: the unit is the outermost
 * group that there are several of. The variance of one reading is put together of the mean squares
 * of unweighted means, level by level; the share between units is taken at its upper confidence
 * limit `ratioConfidence`, so that units which happen to agree are not counted as independent readings.
 *
 * Units: those of the readings. Errors: RangeError without two units, or for a reading that is no number.
 * Source: Mee and Owen, J. Am. Stat. Assoc. 78 (1983) 901, for equal groups; harmonic means for unequal
 * ones after Thomas and Hultquist, Annals of Statistics 6 (1978) 582; Satterthwaite, Biometrics
 * Bulletin 2 (1946) 110 (all from memory).
 */
export function nestedSpread(lots: NestedReadings, ratioConfidence: number): NestedSpread {
  requireOpenFraction(ratioConfidence, 'confidence in the share between units')
  const units = lots.length > 1 ? lots.map((lot) => mean(lot.map(mean))) : (lots[0] ?? []).map(mean)
  requireReadings(units, 'units', 2)
  const components = componentsOf(lots, units)
  const variance = components.reduce((sum, { weight, meanSquare }) => sum + weight * meanSquare, 0)
  const cautious = withTopAtItsLimit(components, ratioConfidence)
  const cautiousVariance = cautious.reduce((sum, { weight, meanSquare }) => sum + weight * meanSquare, 0)
  return {
    mean: mean(units),
    standardDeviation: Math.sqrt(variance),
    components,
    effectiveReadings:
      variance > 0 ? (units.length * cautiousVariance) / cautious[0]!.meanSquare : units.length,
    degreesOfFreedom: variance > 0 ? satterthwaite(cautious, cautiousVariance) : units.length - 1,
  }
}

function componentsOf(lots: NestedReadings, units: readonly number[]): SpreadComponent[] {
  const specimens = lots.flat()
  const within: SpreadComponent[] = [
    ...(lots.length > 1
      ? [
          pooled(
            'specimens',
            lots.map((lot) => lot.map(mean)),
          ),
        ]
      : []),
    pooled('readings', specimens),
  ].filter(({ degreesOfFreedom }) => degreesOfFreedom > 0)
  const top: SpreadComponent = {
    level: lots.length > 1 ? 'lots' : 'specimens',
    weight: 1,
    meanSquare: sumOfSquaredDeviations(units) / (units.length - 1),
    degreesOfFreedom: units.length - 1,
  }
  return [top, ...within]
}

/** The spread inside groups, all of them together. */
function pooled(level: NestedLevel, groups: readonly (readonly number[])[]): SpreadComponent {
  const degreesOfFreedom = groups.reduce((sum, { length }) => sum + length - 1, 0)
  const squares = groups.reduce((sum, group) => sum + sumOfSquaredDeviations(group), 0)
  const inverse = groups.reduce((sum, { length }) => sum + 1 / length, 0) / groups.length
  return { level, weight: 1 - inverse, meanSquare: squares / degreesOfFreedom, degreesOfFreedom }
}

/** The outermost mean square as large as chance may have hidden, and never below what lies under it. */
function withTopAtItsLimit(
  [top, next, ...rest]: readonly SpreadComponent[],
  confidence: number,
): readonly SpreadComponent[] {
  if (!top) return []
  if (!next) return [top]
  const inflated = top.meanSquare * fQuantile(confidence, next.degreesOfFreedom, top.degreesOfFreedom)
  const min = next.meanSquare * (1 - next.weight)
  return [{ ...top, meanSquare: Math.max(inflated, min) }, next, ...rest]
}

const satterthwaite = (components: readonly SpreadComponent[], variance: number): number =>
  variance ** 2 /
  components.reduce(
    (sum, { weight, meanSquare, degreesOfFreedom }) => sum + (weight * meanSquare) ** 2 / degreesOfFreedom,
    0,
  )
