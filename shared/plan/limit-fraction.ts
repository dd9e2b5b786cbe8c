import type { GoverningRequirement } from './requirement'

/** A limit in percent as a fraction strictly between 0 and 1, which the distributions ask for. */
export const fractionOf = ({ value }: Pick<GoverningRequirement, 'value'>): number =>
  Math.min(1 - 1e-9, Math.max(1e-9, value / 100))
