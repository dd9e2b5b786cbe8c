/** Where to look for the root of an increasing function, and its value and slope there. */
export interface RootSearch {
  /** The function less its target, and its slope, at x. The function must not decrease. */
  at: (x: number) => { value: number; slope: number }
  /** The function is at or below zero here. */
  lower: number
  /** The function is at or above zero here. */
  upper: number
  guess: number
}

const MAX_STEPS = 200
/** Newton's error is about the square of its last step: a step this small has reached all digits. */
const LAST_STEP = 1e-9

/**
 * Root of an increasing function whose x is of the order of 1 or more (or is a logarithm): Newton's
 * step while it stays inside the bracket and keeps shrinking, bisection otherwise.
 *
 * Units: those of x. Errors: RangeError when the function yields NaN.
 * Source: the safeguarded Newton method, Dennis and Schnabel, Numerical Methods for Unconstrained
 * Optimization and Nonlinear Equations (1983), section 2.5 (from memory).
 */
export function bracketedNewton({ at, lower, upper, guess }: RootSearch): number {
  let low = lower
  let high = upper
  let x = guess > low && guess < high ? guess : (low + high) / 2
  let lastStep = high - low
  for (let step = 0; step < MAX_STEPS; step++) {
    const { value, slope } = at(x)
    if (Number.isNaN(value)) throw new RangeError(`The function has no value at ${x}.`)
    if (value === 0) return x
    if (value < 0) low = x
    else high = x
    const newton = x - value / slope
    if (Math.abs(newton - x) <= LAST_STEP * Math.max(1, Math.abs(x))) return newton
    const usable = newton > low && newton < high && Math.abs(newton - x) <= 0.75 * Math.abs(lastStep)
    const next = usable ? newton : (low + high) / 2
    lastStep = next - x
    if (Math.abs(lastStep) <= 2 * Number.EPSILON * Math.abs(next)) return next
    x = next
  }
  return x
}
