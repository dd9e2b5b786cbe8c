import { isStatedLayer, rulingOn, type Limit, type Ruling } from '@/shared/plan/requirement'

/**
 * A ruling worked out again under another default: the value of the edition the
 * programme chose. The programme's own layers keep their weight.
 */
export function rulingUnder(ruling: Ruling, byDefault: Limit['byDefault']): Ruling {
  const stated = ruling.layers.filter(isStatedLayer).map((layer) => ({ ...layer, limit: ruling.limit.key }))
  const again = rulingOn({ ...ruling.limit, byDefault }, stated)
  const looser =
    ruling.limit.direction === 'at most'
      ? again.value > ruling.limit.byDefault.value
      : again.value < ruling.limit.byDefault.value
  return { ...again, relaxed: looser }
}
