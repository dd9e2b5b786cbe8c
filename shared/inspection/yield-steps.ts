import { exactProportionInterval } from '@/shared/statistics/intervals/exact-proportion'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { firstPassYield, rolledYield } from '@/shared/statistics/yield/process-yield'
import type { ElectricalTest } from './defect-record'
import type { Inspection } from '@/shared/records/inspection'

/** A step that assemblies pass, or not, at the first attempt. */
export interface YieldStep {
  readonly step: string
  readonly passed: number
  readonly entered: number
  readonly share: number
  /** Exact, two-sided. */
  readonly interval: Interval
}

export interface YieldSteps {
  readonly steps: readonly YieldStep[]
  /** Product of the steps; undefined while there is none. */
  readonly rolled: number | undefined
}

/**
 * First-pass yields of visual inspection (assemblies whose first look found no
 * defect) and of electrical test, and what rolls up from them if the steps fail
 * independently. Tests that contradict themselves are left out.
 */
export function yieldSteps(
  inspections: readonly Inspection[],
  tests: readonly Pick<ElectricalTest, 'tested' | 'passedFirst'>[],
  confidence: number,
): YieldSteps {
  const firstLooks = new Map<string, boolean>()
  for (const { assembly, defects } of inspections) {
    const key = assembly.trim().toLowerCase()
    if (!firstLooks.has(key)) firstLooks.set(key, defects.length === 0)
  }
  const sound = tests.filter(({ tested, passedFirst }) => passedFirst <= tested)
  const counts = [
    {
      step: 'Visual inspection',
      passed: [...firstLooks.values()].filter(Boolean).length,
      entered: firstLooks.size,
    },
    {
      step: 'Electrical test',
      passed: sound.reduce((sum, { passedFirst }) => sum + passedFirst, 0),
      entered: sound.reduce((sum, { tested }) => sum + tested, 0),
    },
  ].filter(({ entered }) => entered > 0)
  const steps = counts.map((count) => ({
    ...count,
    share: firstPassYield(count.passed, count.entered),
    interval: exactProportionInterval({ found: count.passed, inspected: count.entered }, confidence),
  }))
  return { steps, rolled: steps.length > 0 ? rolledYield(steps.map(({ share }) => share)) : undefined }
}
