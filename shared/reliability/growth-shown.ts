import { crowAmsaaGrowth, type CrowAmsaaFit } from '@/shared/reliability/growth/crow-amsaa'
import { duaneGrowth, type DuaneFit } from '@/shared/reliability/growth/duane'

/** Whether failures grow rarer, by both growth models. */
export interface GrowthShown {
  readonly times: readonly number[]
  readonly end: number
  readonly crow: CrowAmsaaFit
  /** Needs three failures. */
  readonly duane: DuaneFit | undefined
}

/** The growth fits of failure times that ended at a set moment, or why there are none. */
export function growthShown(
  times: readonly number[],
  end: number,
):
  | { readonly growth: GrowthShown; readonly why?: undefined }
  | { readonly growth?: undefined; readonly why: string } {
  if (times.length < 2)
    return {
      why: `Growth needs two failures at least; ${times.length} ${times.length === 1 ? 'is' : 'are'} on record.`,
    }
  if (times.some((time, index) => !(time > (times[index - 1] ?? 0))))
    return { why: 'Two failures fall on the same moment: their order is not known, and no growth is fitted.' }
  const crow = crowAmsaaGrowth(times, {
    endedAt: end,
    estimate: times.length < 3 ? 'maximum likelihood' : 'unbiased',
  })
  return { growth: { times, end, crow, duane: times.length < 3 ? undefined : duaneGrowth(times) } }
}
