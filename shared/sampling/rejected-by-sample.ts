import { sampledMethods, type sampledLimits } from './asked-methods'
import { seriesOf } from './lot-sampling'
import type { Inputs } from '@/shared/rules/rule'
import { contextFrom, type SamplingInputs } from './sampling-reads'
import { groupedBy } from '@/shared/grouped-by'

/** The tests, by their keys, whose sample rejected a lot, by the lot's id. */
export function lotsRejectedBySample(
  inputs: SamplingInputs & Inputs<typeof sampledLimits>,
): ReadonlyMap<string, readonly string[]> {
  const context = contextFrom(inputs)
  const rejected = sampledMethods(inputs).flatMap(({ method, limit }) =>
    seriesOf(inputs.lots, method, limit, context)
      .flatMap(({ lots }) => lots)
      .filter(({ sample }) => sample?.outcome.decided === 'rejected')
      .map(({ lot }) => ({ lot, method })),
  )
  return groupedBy(
    rejected,
    ({ lot }) => lot.id,
    ({ method }) => method.key,
  )
}
