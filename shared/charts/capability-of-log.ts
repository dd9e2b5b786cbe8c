import { capabilityStudy, type CapabilityStudy } from '@/shared/statistics/capability/study'
import { sigmaFromMovingRange } from '@/shared/statistics/capability/within-sigma'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { judgeChart } from '@/shared/statistics/run-rules/judged-chart'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'
import type { ChartChoice } from './chart-choice'
import { phaseStarts, type Series } from './chart-stretches'
import type { ProcessWindow } from '@/shared/logs/logged-window'

/** Fewer readings leave so wide a bound that the index says nothing. */
export const FEWEST_FOR_CAPABILITY = 20

/** Capability of a log against its window, with the points that broke the control limits. */
export interface LogCapability {
  readonly study: CapabilityStudy
  readonly pointsBeyond: number
}

/** The readings since the newest fresh start; all of them where the log has none. */
export interface NewestStretch {
  readonly values: readonly number[]
  /** What began; undefined where nothing did. */
  readonly since: string | undefined
}

/** What speaks for the process as it runs now: readings from before a known and lasting change do not. */
export function newestStretch(series: Series, phases: ChartChoice['phases']): NewestStretch {
  const { from, name } = phaseStarts(series.instants, phases).at(-1)!
  return from === 0
    ? { values: series.values, since: undefined }
    : { values: series.values.slice(from), since: name }
}

/**
 * The capability of readings against a window at a one-sided confidence. A
 * single point beyond the control limits makes the log unstable. Undefined with
 * too few readings, without spread, or without a limit.
 */
export function capabilityOf(
  values: readonly number[],
  { least, most }: ProcessWindow,
  confidence: number,
): LogCapability | undefined {
  if (values.length < FEWEST_FOR_CAPABILITY || (!least && !most)) return undefined
  if (least && most && !(least.value < most.value)) return undefined
  const within = sigmaFromMovingRange(values)
  if (!(within.sigma > 0)) return undefined
  const pointsBeyond = judgeChart(individualsChart(values), [WESTERN_ELECTRIC_1956[0]]).signals.length
  const study = capabilityStudy({
    values,
    within,
    limits: { lower: least?.value, upper: most?.value },
    stability: pointsBeyond === 0 ? 'stable' : 'unstable',
    confidence,
  })
  return { study, pointsBeyond }
}

/** Of the bound that a capability must clear. */
export const CAPABILITY_CONFIDENCE = 0.95
