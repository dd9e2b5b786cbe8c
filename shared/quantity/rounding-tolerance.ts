/** Far below what any instrument tells apart, far above what sums and quotients of decimals leave behind. */
const SHARE = 1e-9

/**
 * The difference between two figures that decides nothing: 0.1 + 0.2 against
 * 0.3, or 57 of 100 in per cent against 57. Zero where either is not finite.
 */
export const roundingTolerance = (one: number, other: number): number =>
  Number.isFinite(one) && Number.isFinite(other) ? SHARE * Math.max(Math.abs(one), Math.abs(other)) : 0
