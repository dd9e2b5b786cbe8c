/**
 * The smallest size of a number that is not zero. Nothing that is measured is smaller in any unit of ours, and
 * the smallest that a machine can hold lose their digits in sums and become zero or an infinity in quotients.
 */
export const SMALLEST_NUMBER = 1e-12

/** Whether a number is zero, or can be told from it. */
export const isToldFromZero = (number: number): boolean => number === 0 || Math.abs(number) >= SMALLEST_NUMBER
