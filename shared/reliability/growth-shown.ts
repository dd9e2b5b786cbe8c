import { crowAmsaaGrowth, type CrowAmsaaFit } from '@/shared/reliability/growth/crow-amsaa'
import {
  growthFitTest,
  growthShapeInterval,
  type GrowthFitTest,
} from '@/shared/reliability/growth/crow-amsaa-fit-test'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { duaneGrowth, type DuaneFit } from '@/shared/reliability/growth/duane'

/** Whether failures grow rarer, by both growth models. */
export interface GrowthShown {
  readonly times: readonly number[]
  readonly end: number
  readonly crow: CrowAmsaaFit
  /** Of the power law, two-sided, with the confidence asked. */
  readonly shape: Interval
  /** Needs three failures. */
  readonly fitTest: GrowthFitTest | undefined
  /** Needs three failures. */
  readonly duane: DuaneFit | undefined
}

/**
 * The growth fits of failure times that ended at a set moment, or why there are
 * none. Failures that fall together are taken as they are: the power law asks for no order of them.
 */
export function growthShown(
  times: readonly number[],
  end: number,
  confidence: number,
):
  | { readonly growth: GrowthShown; readonly why?: undefined }
  | { readonly growth?: undefined; readonly why: string } {
  if (times.length < 2)
    return {
      why: `Growth needs two failures at least; ${times.length} ${times.length === 1 ? 'is' : 'are'} on record.`,
    }
  if (!(times[0]! < end))
    return { why: 'All failures came at the end of the time so far: there is no course of them to fit.' }
  const crow = crowAmsaaGrowth(times, {
    endedAt: end,
    estimate: times.length < 3 ? 'maximum likelihood' : 'unbiased',
  })
  const shape = growthShapeInterval(times, end, confidence)
  return {
    growth: {
      times,
      end,
      crow,
      shape,
      fitTest: growthFitTest(times, end),
      duane: times.length < 3 ? undefined : duaneGrowth(times),
    },
  }
}
