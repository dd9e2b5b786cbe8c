/** Distance from the expected value, relative to it; absolute where zero is expected. */
export const relativeError = (actual: number, expected: number): number =>
  actual === expected ? 0 : Math.abs(actual - expected) / (Math.abs(expected) || 1)
