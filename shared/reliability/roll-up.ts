import type { RecordOf } from '@/shared/records/record-kinds'
import { isAccelerationNamed, runsOf, wearOutShown } from '@/shared/reliability/demonstration/wear-out-shown'
import { testLengthFactor } from '@/shared/reliability/demonstration/demonstration'
import { boardHoursStillToServe, fieldTimeline, type FieldExposure, type FieldReturn } from './field-shown'
import { survivalAt, type ProgrammeTarget } from './programme-target'

/** One way of knowing the board's failure rate. Rates in FIT a board. */
export interface RateKnown {
  readonly from: 'prediction' | 'life test' | 'service'
  /** Assumed from a model, or shown by joints of this programme. */
  readonly basis: 'assumed' | 'shown'
  readonly rate: number
  readonly lower: number | undefined
  /** What can be relied on: the prediction itself, or the upper bound of what was shown. */
  readonly upper: number
  readonly survival: number
  readonly status: 'within the target' | 'not shown yet' | 'beyond the target'
  /** What would show it with no further failure; undefined where nothing more is to be shown. */
  readonly toShow:
    { readonly amount: number; readonly unit: 'joints run through a life' | 'board-hours' } | undefined
}

/**
 * Everything that is known of the board's failure rate, brought to one scale
 * and held against the target; assumed and shown stay apart. The life test's
 * cycles are brought to hours by the service life they were specified for, at a
 * constant rate. Source: chi-square test length, NIST/SEMATECH e-Handbook 8.3.1.1.
 */
export function rollUp(
  target: ProgrammeTarget,
  known: {
    /** FIT a board by the model of the joint budget. */
    readonly predicted: number | undefined
    readonly specimens: readonly RecordOf<'life-test'>[]
    readonly returns: readonly FieldReturn[]
    readonly exposures: readonly FieldExposure[]
  },
): RateKnown[] {
  const { predicted, specimens, returns, exposures } = known
  const rows: RateKnown[] = []
  if (predicted !== undefined)
    rows.push({
      from: 'prediction',
      basis: 'assumed',
      rate: predicted,
      lower: undefined,
      upper: predicted,
      survival: survivalAt(predicted, target),
      status: predicted <= target.boardFit ? 'within the target' : 'beyond the target',
      toShow: undefined,
    })
  const tested = lifeTestRate(target, specimens)
  if (tested) rows.push(tested)
  const served = fieldTimeline(returns, exposures, target).at(-1)
  if (served)
    rows.push(
      shown('service', target, served, {
        amount: boardHoursStillToServe(served, target),
        unit: 'board-hours',
      }),
    )
  return rows
}

function lifeTestRate(
  target: ProgrammeTarget,
  specimens: readonly RecordOf<'life-test'>[],
): RateKnown | undefined {
  const { lifeCycles, confidence, joints, lifeH, allowedFailures, wearOutShapes: shapes } = target
  if (lifeCycles === undefined || !specimens.every(isAccelerationNamed)) return undefined
  const runs = runsOf(specimens, lifeCycles)
  if (!runs.some(({ lives }) => lives > 0)) return undefined
  const events = runs.filter(({ failed }) => failed).length
  const { upper, lower, jointLives } = wearOutShown(runs, { boardJoints: joints, shapes, confidence })
  // Failures of a board in its life to failures of a board in 10⁹ hours.
  const toFit = (perLife: number): number => (perLife / lifeH) * 1e9
  const needed = (testLengthFactor({ confidence, failuresAllowed: events }) * joints) / allowedFailures
  return shown(
    'life test',
    target,
    { rate: toFit((events / jointLives) * joints), lower: toFit(lower), upper: toFit(upper) },
    { amount: Math.max(0, needed - jointLives), unit: 'joints run through a life' },
  )
}

function shown(
  from: RateKnown['from'],
  target: ProgrammeTarget,
  { rate, lower, upper }: { rate: number; lower: number; upper: number },
  toShow: RateKnown['toShow'] & object,
): RateKnown {
  const status =
    upper <= target.boardFit
      ? 'within the target'
      : lower > target.boardFit
        ? 'beyond the target'
        : 'not shown yet'
  return {
    from,
    basis: 'shown',
    rate,
    lower,
    upper,
    survival: survivalAt(upper, target),
    status,
    toShow: status === 'not shown yet' ? toShow : undefined,
  }
}
