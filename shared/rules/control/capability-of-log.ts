import type { LogSeries } from '@/shared/records/log-series'
import { capabilityStudy, type CapabilityStudy } from '@/shared/statistics/capability/study'
import { sigmaFromMovingRange } from '@/shared/statistics/capability/within-sigma'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { judgeChart } from '@/shared/statistics/run-rules/judged-chart'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'
import type { ProcessWindow } from './logged-window'

/** Fewer readings leave so wide a bound that the index says nothing. */
export const FEWEST_FOR_CAPABILITY = 20

/** Capability of a log against its window, with the points that broke the control limits. */
export interface LogCapability {
  readonly study: CapabilityStudy
  readonly pointsBeyond: number
}

/**
 * The capability of a series against a window at a one-sided confidence. A
 * single point beyond the control limits makes the log unstable. Undefined with
 * too few readings, without spread, or without a limit.
 */
export function capabilityOf(
  { values }: Pick<LogSeries, 'values'>,
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
