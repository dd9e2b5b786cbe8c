import { isStricter, type Ruling } from './requirement'
import { rulingUnder } from './edition-ruling'

/**
 * A ruling in °C whose default follows from where the alloy melts: so many
 * kelvin above (`sign` 1) or below (−1) a temperature of the alloy. The
 * programme's own layers keep their weight.
 */
export function followingAlloy(ruling: Ruling, alloyC: number, distanceK: Ruling, sign: 1 | -1 = 1): Ruling {
  const { byDefault } = distanceK.limit
  const value = alloyC + sign * distanceK.value
  const from =
    distanceK.document === byDefault.from.cite
      ? byDefault.from
      : ({ cite: distanceK.document, how: 'published' } as const)
  const again = rulingUnder(ruling, { value, authority: distanceK.authority, from })
  return { ...again, relaxed: distanceK.relaxed || isStricter(ruling.limit, value, again.value) }
}
