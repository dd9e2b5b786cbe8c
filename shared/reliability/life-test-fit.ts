import type { RecordOf } from '@/shared/records/record-kinds'
import { weibayesScaleBound } from '@/shared/reliability/weibull/weibayes'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { weibullBounds, type WeibullBounds } from '@/shared/reliability/weibull/weibull-bounds'
import { weibullFitTest, type WeibullFitTest } from '@/shared/reliability/weibull/weibull-fit-test'
import { weibullByLikelihood } from '@/shared/reliability/weibull/weibull-likelihood'
import { groupedBy } from '@/shared/grouped-by'

export type LifeSpecimen = RecordOf<'life-test'>

/** What the specimens of one life test say of its Weibull distribution, in test cycles. */
export interface LifeTestFit {
  readonly test: string
  readonly specimens: number
  readonly failures: number
  /** Shape above 1: wear-out; below 1: early failures. Undefined with fewer than two different failures. */
  readonly fit: { readonly shape: number; readonly scale: number } | undefined
  /** Two-sided bounds of the fit, with the confidence asked. */
  readonly bounds: WeibullBounds | undefined
  /** Whether the failures lie as a Weibull has them; undefined where they are too few, or units were taken out before them. */
  readonly fitTest: WeibullFitTest | undefined
  /** Cycles by which 1 % of specimens fail, by the fit, with its bounds. */
  readonly onePercentAt: ({ readonly life: number } & Interval) | undefined
  /** Lower bound of the scale at the shape presumed: what is left to say without a fit. */
  readonly scaleBound:
    { readonly shape: number; readonly scale: number; readonly confidence: number } | undefined
}

/**
 * Weibull fit by likelihood for each test, with specimens still running counted
 * as such; and the lower bound of the characteristic life at a presumed shape
 * (Weibayes), which needs no failure. Specimens that did not run are left out.
 *
 * Units: test cycles. Source: NIST/SEMATECH e-Handbook 8.4.1 (likelihood).
 */
export function lifeTestFits(
  specimens: readonly LifeSpecimen[],
  presumed: { readonly shape: number; readonly confidence: number },
): LifeTestFit[] {
  const tests = groupedBy(
    specimens.filter(({ cycles }) => cycles > 0),
    ({ test }) => test,
  )
  return [...tests].map(([test, own]) => {
    const failures = own.filter(({ failed }) => failed).map(({ cycles }) => cycles)
    const suspensions = own.filter(({ failed }) => !failed).map(({ cycles }) => cycles)
    const fit = fitOrNone(failures, suspensions)
    const bounds = fit && weibullBounds({ failures, suspensions }, fit, presumed.confidence)
    const scale = weibayesScaleBound({ failures, suspensions }, presumed.shape, presumed.confidence)
    return {
      test,
      specimens: own.length,
      failures: failures.length,
      fit,
      bounds,
      fitTest: weibullFitTest({ failures, suspensions }),
      onePercentAt: fit &&
        bounds && {
          life: fit.scale * (-Math.log1p(-0.01)) ** (1 / fit.shape),
          ...bounds.lifeAt(0.01),
        },
      scaleBound: { ...presumed, scale },
    }
  })
}

/** Two failures at different lives are the least a shape can be told from. */
function fitOrNone(
  failures: readonly number[],
  suspensions: readonly number[],
): { shape: number; scale: number } | undefined {
  if (new Set(failures).size < 2) return undefined
  const { shape, scale } = weibullByLikelihood({ failures, suspensions })
  return { shape, scale }
}
