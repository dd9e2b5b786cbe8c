import { isUsable } from '@/shared/records/lot-identity'
import type { Facts } from '@/shared/rules/facts'
import type { Interval } from '@/shared/statistics/intervals/interval'
import type { ToleranceContent } from '@/shared/statistics/tolerance/tolerance-content'
import { inputsOf } from '@/shared/rules/inputs-of'
import { platingOf, type PlatingReadings } from './plating-readings'
import { platingReads, specificationFrom } from './plating-reads'
import { platingWindow, type PlatingWindow, hasWindow } from './plating-window'
import { toleranceShown } from './tolerance-shown'
import { countingReads } from '@/shared/lot-tests/counted-tests'

/** What a lot's readings of one deposit at one place show, beside what is specified. */
export interface PlatingSpread extends PlatingReadings {
  readonly window: PlatingWindow
  readonly mean: number
  readonly readings: number
  /** Tolerance bounds with the content asked: those the lot is judged by. */
  readonly bounds: Interval
}

/**
 * How the measured thickness of every usable lot lies, where the specification
 * has a window for it; readings that show no spread are left out. µm.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3.
 */
export function platingSpreads(facts: Facts, content: ToleranceContent): PlatingSpread[] {
  const inputs = inputsOf({ ...countingReads, ...platingReads }, facts)
  if (!inputs) return []
  const specification = specificationFrom(inputs)
  return inputs.lots
    .filter(isUsable)
    .flatMap((lot) => platingOf(lot, inputs).groups)
    .flatMap((group) => {
      const window = platingWindow(group, specification)
      const { bySpecimen } = group
      if (!hasWindow(window) || bySpecimen.length < 2 || !bySpecimen.flat().every(Number.isFinite)) return []
      const ofTwo = window.maxUm !== undefined
      const boundOn = (side: 'lower' | 'upper') =>
        toleranceShown(bySpecimen, { side, value: window.minUm, ofTwo }, content)
      const lower = boundOn('lower')
      const bounds = { lower: lower.bound!, upper: boundOn('upper').bound! }
      return [{ ...group, window, mean: lower.mean, readings: lower.readings, bounds }]
    })
}
