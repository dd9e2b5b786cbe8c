import type { ValueOf } from '@/shared/plan/parameter'
import type { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { kindAndPart } from '@/shared/records/lot-identity'
import type { SamplingSettings } from './sampling-plan'

/** A part to be evaluated by one test, with what is stated of its sampling. */
export type NeededPart = ValueOf<typeof lotsNeeded>[number]

/** How lots of one part are sampled for one test: as the programme samples, save for what the part's own row states. */
export function settingsFor(
  programme: SamplingSettings,
  needed: readonly NeededPart[],
  lot: { readonly kind: string; readonly part: string },
  method: string,
): SamplingSettings {
  const own = needed.find((row) => row.method === method && kindAndPart(row) === kindAndPart(lot))
  if (own?.level === undefined && own?.aql === undefined && own?.sampleSize === undefined) return programme
  return {
    ...programme,
    level: own.level ?? programme.level,
    limit: own.aql ?? programme.limit,
    ...(own.sampleSize !== undefined && { statedSize: own.sampleSize }),
  }
}
