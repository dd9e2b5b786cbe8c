import { sampledMethods, type sampledLimits } from './asked-methods'
import { seriesOf } from './lot-sampling'
import type { Inputs } from '@/shared/rules/rule'
import { contextFrom, type SamplingInputs } from './sampling-reads'

/** The tests, by their keys, whose sample rejected a lot, by the lot's id. */
export function lotsRejectedBySample(
  inputs: SamplingInputs & Inputs<typeof sampledLimits>,
): ReadonlyMap<string, readonly string[]> {
  const rejected = new Map<string, string[]>()
  const context = contextFrom(inputs)
  for (const { method, limit } of sampledMethods(inputs)) {
    for (const { lot, sample } of seriesOf(inputs.lots, method, limit, context).flatMap(({ lots }) => lots)) {
      if (sample?.outcome.decided !== 'rejected') continue
      rejected.set(lot.id, [...(rejected.get(lot.id) ?? []), method.key])
    }
  }
  return rejected
}
