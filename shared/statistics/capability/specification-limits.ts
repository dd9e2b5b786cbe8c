import { requireFinite } from '@/shared/statistics/reading-checks'

/** What a measured value must lie between; one side may be open. All in the unit of the readings. */
export type SpecificationLimits = { lower?: number; upper?: number; target?: number }

/** Refuses limits that bound nothing or cross. */
export function requireSpecificationLimits({ lower, upper, target }: SpecificationLimits): void {
  if (lower === undefined && upper === undefined)
    throw new RangeError('Capability needs a lower or an upper specification limit.')
  if (lower !== undefined) requireFinite(lower, 'lower specification limit')
  if (upper !== undefined) requireFinite(upper, 'upper specification limit')
  if (target !== undefined) requireFinite(target, 'target')
  if (lower !== undefined && upper !== undefined && !(lower < upper))
    throw new RangeError(`The lower specification limit (${lower}) must lie below the upper (${upper}).`)
}
