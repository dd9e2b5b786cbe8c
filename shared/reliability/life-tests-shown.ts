import type { RecordOf } from '@/shared/records/record-kinds'
import { lifeTestFits, type LifeTestFit } from './life-test-fit'
import { exactProportionUpperBound } from '@/shared/statistics/intervals/exact-proportion'
import { rankBounds, type BoundedRank } from '@/shared/reliability/weibull/rank-bounds'
import type { ProgrammeTarget } from './programme-target'

type Specimen = RecordOf<'life-test'>

/**
 * Presumed where failures are too few to tell it: the spread of fatigue lives
 * of joints with compliant leads, as in the Engelmaier model.
 */
export const PRESUMED_SHAPE = 2

/** One life test, with the fit of its specimens' lives. */
export interface LifeTestShown extends LifeTestFit {
  readonly lives: { readonly failures: readonly number[]; readonly suspensions: readonly number[] }
  /** Plotting positions with two-sided bounds; empty without a failure. */
  readonly ranks: readonly BoundedRank[]
  readonly joints: number
  /** Service cycles that a test cycle is said to stand for, by whichever model; several when specimens differ. */
  readonly accelerations: readonly { readonly factor: number; readonly model: string | undefined }[]
  /** Joint-cycles of service that it stands for. */
  readonly exposure: number
}

/** What a run of specimens through a whole service life has shown. */
export interface SuccessRun {
  /** Specimens that ran a life, or failed within it; those still short of one say nothing yet. */
  readonly specimens: number
  readonly failed: number
  readonly jointsEach: number
  /** At least this share of specimens outlives service, with the confidence asked. */
  readonly specimenSurvival: number
  /** The same for a board, its joints in series and alike those of the specimens. */
  readonly boardSurvival: number
}

export const lifeTestsShown = (
  specimens: readonly Specimen[],
  { confidence }: Pick<ProgrammeTarget, 'confidence'>,
): LifeTestShown[] =>
  lifeTestFits(specimens, { shape: PRESUMED_SHAPE, confidence }).map((fit) => {
    const own = specimens.filter(({ test, cycles }) => test === fit.test && cycles > 0)
    const lives = livesOf(own)
    const accelerations = new Map(
      own.map(({ acceleration, model }) => [`${acceleration} ${model}`, { factor: acceleration, model }]),
    )
    return {
      ...fit,
      lives,
      ranks: lives.failures.length === 0 ? [] : rankBounds(lives, 0.9),
      joints: own.reduce((sum, { joints }) => sum + joints, 0),
      accelerations: [...accelerations.values()],
      exposure: own.reduce((sum, row) => sum + row.joints * row.cycles * row.acceleration, 0),
    }
  })

/**
 * The success run: specimens that outlived one service life against those that
 * did not. Undefined while none has run so long. The board's joints are in
 * series and alike, so board survival is specimen survival to the ratio of joints.
 * Source: success-run theorem, exact binomial bound (Clopper and Pearson 1934).
 */
export function successRun(
  specimens: readonly Specimen[],
  { lifeCycles, confidence, joints }: Pick<ProgrammeTarget, 'lifeCycles' | 'confidence' | 'joints'>,
): SuccessRun | undefined {
  if (lifeCycles === undefined) return undefined
  const ranALife = ({ cycles, acceleration }: Specimen): boolean => cycles * acceleration >= lifeCycles
  const counted = specimens.filter((specimen) => specimen.failed || ranALife(specimen))
  if (counted.length === 0) return undefined
  const failed = counted.filter((specimen) => specimen.failed && !ranALife(specimen)).length
  const jointsEach = counted.reduce((sum, row) => sum + row.joints, 0) / counted.length
  const specimenSurvival =
    1 - exactProportionUpperBound({ found: failed, inspected: counted.length }, confidence)
  return {
    specimens: counted.length,
    failed,
    jointsEach,
    specimenSurvival,
    boardSurvival: specimenSurvival ** (joints / jointsEach),
  }
}

const livesOf = (specimens: readonly Pick<Specimen, 'failed' | 'cycles'>[]) => ({
  failures: specimens.filter(({ failed }) => failed).map(({ cycles }) => cycles),
  suspensions: specimens.filter(({ failed }) => !failed).map(({ cycles }) => cycles),
})
