import { requireNotNegative, requirePositive } from '@/shared/statistics/argument-checks'
import type { RecordOf } from '@/shared/records/record-kinds'
import { exactRateLowerBound, exactRateUpperBound } from '@/shared/statistics/intervals/exact-poisson-rate'

type Specimen = Pick<RecordOf<'life-test'>, 'joints' | 'cycles' | 'acceleration' | 'failed' | 'model'>

/** One specimen of a life test, its run counted in service lives. */
export interface SpecimenRun {
  readonly joints: number
  readonly lives: number
  readonly failed: boolean
}

/** Weibull shapes between which the true one is presumed to lie. */
export interface ShapeRange {
  readonly min: number
  readonly max: number
}

/** Failures that a board has in its life on average, one-sided each, over all the shapes presumed. */
export interface WearOutShown {
  readonly upper: number
  readonly lower: number
  /** Joints run through a whole life that the test counts for, at the shape that counts it for least. */
  readonly jointLives: number
  readonly shapeOfMin: number
}

/**
 * What a life test shows of a board whose joints wear out alike (Weibayes): a
 * joint that ran x lives counts as x^β joints that ran one. At a shape above 1 a
 * short run counts for almost nothing, however many specimens ran it; a run of
 * several lives counts for more than one. Nobody knows β: the upper bound takes
 * the worst shape presumed, the lower bound the best.
 *
 * Units: none. Errors: RangeError where a run is negative, or nothing ran, or a shape or the confidence is out of range.
 * Source: Weibayes with χ² bounds of the failures (R. B. Abernethy, The New Weibull Handbook, from memory).
 */
export function wearOutShown(
  specimens: readonly SpecimenRun[],
  { boardJoints, shapes, confidence }: { boardJoints: number; shapes: ShapeRange; confidence: number },
): WearOutShown {
  requirePositive(shapes.min, 'least Weibull shape')
  specimens.forEach(({ lives }) => requireNotNegative(lives, 'lives run'))
  const events = specimens.filter(({ failed }) => failed).length
  const shapeOfMin = lowestOf((shape) => jointLivesAt(specimens, shape), shapes)
  const jointLives = jointLivesAt(specimens, shapeOfMin)
  // The sum is convex in the shape: it is greatest at one of the ends.
  const max = Math.max(jointLivesAt(specimens, shapes.min), jointLivesAt(specimens, shapes.max))
  return {
    upper: exactRateUpperBound({ events, exposure: jointLives }, confidence) * boardJoints,
    lower: exactRateLowerBound({ events, exposure: max }, confidence) * boardJoints,
    jointLives,
    shapeOfMin,
  }
}

/** Whether unlike stresses may be added: every acceleration other than 1 has a model that is named. */
export const isAccelerationNamed = ({ acceleration, model }: Specimen): boolean =>
  acceleration === 1 || model !== undefined

/** Beyond these a run is none, or counts as this many: what it comes to at any Weibull shape stays a number. */
const LIVES_RUN = { min: 1e-9, max: 1e6 }

/** The runs of specimens, counted in lives of so many service cycles. */
export const runsOf = (specimens: readonly Specimen[], lifeCycles: number): SpecimenRun[] =>
  specimens.map(({ joints, cycles, acceleration, failed }) => ({
    joints,
    lives: livesRun((cycles * acceleration) / lifeCycles),
    failed,
  }))

const livesRun = (lives: number): number => (lives < LIVES_RUN.min ? 0 : Math.min(lives, LIVES_RUN.max))

const jointLivesAt = (specimens: readonly SpecimenRun[], shape: number): number =>
  specimens.reduce((sum, { joints, lives }) => sum + joints * lives ** shape, 0)

/** Where a convex function is least between two ends, by thirds. */
function lowestOf(convex: (shape: number) => number, { min, max }: ShapeRange): number {
  let [low, high] = [min, Math.max(min, max)]
  while (high - low > 1e-9 * high) {
    const [one, other] = [low + (high - low) / 3, high - (high - low) / 3]
    if (convex(one) <= convex(other)) high = other
    else low = one
  }
  // An end that is as low as any is told as it was given.
  return [min, max].find((end) => convex(end) <= convex((low + high) / 2)) ?? (low + high) / 2
}
