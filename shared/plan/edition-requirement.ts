import {
  isStatedLayer,
  governingRequirement,
  type Limit,
  type GoverningRequirement,
} from '@/shared/plan/requirement'

/**
 * A requirement worked out again under another default: the value of the edition the
 * programme chose. The programme's own layers keep their weight.
 */
export function governingUnder(
  governing: GoverningRequirement,
  byDefault: Limit['byDefault'],
): GoverningRequirement {
  const stated = governing.layers
    .filter(isStatedLayer)
    .map((layer) => ({ ...layer, limit: governing.limit.key }))
  const again = governingRequirement({ ...governing.limit, byDefault }, stated)
  const looser =
    governing.limit.direction === 'at most'
      ? again.value > governing.limit.byDefault.value
      : again.value < governing.limit.byDefault.value
  return { ...again, relaxed: looser }
}
