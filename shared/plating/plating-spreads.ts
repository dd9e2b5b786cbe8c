import { isUsable } from '@/shared/records/lot-identity'
import type { Facts } from '@/shared/rules/facts'
import { mean } from '@/shared/statistics/sample-moments'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { lowerToleranceBound, upperToleranceBound } from '@/shared/statistics/tolerance/tolerance-bound'
import type { ToleranceContent } from '@/shared/statistics/tolerance/tolerance-content'
import { platingInputsOf } from './plating-inputs-of'
import { platingOf, type PlatingReadings } from './plating-readings'
import { specificationFrom } from './plating-reads'
import { platingWindow, type PlatingWindow, hasWindow } from './plating-window'
import { demandsFrom } from '@/shared/sampling/sampling-reads'

/** What a lot's readings of one deposit at one place show, beside what is specified. */
export interface PlatingSpread extends PlatingReadings {
  readonly window: PlatingWindow
  readonly mean: number
  /** One-sided tolerance bounds, each with the content asked: those the lot is judged by. */
  readonly bounds: Interval
}

/**
 * How the measured thickness of every usable lot lies, where the specification
 * has a window for it; readings that show no spread are left out. µm.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3.
 */
export function platingSpreads(facts: Facts, content: ToleranceContent): PlatingSpread[] {
  const inputs = platingInputsOf(facts)
  if (!inputs) return []
  const demands = demandsFrom(inputs)
  const specification = specificationFrom(inputs)
  return inputs.lots
    .filter(isUsable)
    .flatMap((lot) => platingOf(lot, demands).groups)
    .flatMap((group) => {
      const window = platingWindow(group, specification)
      const { thicknessesUm } = group
      if (!hasWindow(window) || thicknessesUm.length < 2 || !thicknessesUm.every(Number.isFinite)) return []
      const bounds = {
        lower: lowerToleranceBound(thicknessesUm, content),
        upper: upperToleranceBound(thicknessesUm, content),
      }
      return [{ ...group, window, mean: mean(thicknessesUm), bounds }]
    })
}
