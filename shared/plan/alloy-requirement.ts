import { isStricter, type GoverningRequirement } from './requirement'
import { governingUnder } from './edition-requirement'

/**
 * A requirement in °C whose default follows from where the alloy melts: so many
 * kelvin above (`sign` 1) or below (−1) a temperature of the alloy. The
 * programme's own layers keep their weight.
 */
export function followingAlloy(
  governing: GoverningRequirement,
  alloyC: number,
  distanceK: GoverningRequirement,
  sign: 1 | -1 = 1,
): GoverningRequirement {
  const { byDefault } = distanceK.limit
  const value = alloyC + sign * distanceK.value
  const from =
    distanceK.document === byDefault.from.cite
      ? byDefault.from
      : ({ cite: distanceK.document, how: 'published' } as const)
  const again = governingUnder(governing, { value, authority: distanceK.authority, from })
  return { ...again, relaxed: distanceK.relaxed || isStricter(governing.limit, value, again.value) }
}
