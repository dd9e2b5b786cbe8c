import { requireNotNegative, requirePositive, requireProbability } from '../argument-checks'
import { bracketedNewton } from './bracketed-newton'
import { lnGamma } from './ln-gamma'
import { normalQuantile } from './normal'
import { poissonDensity } from './saddle-point'

/** The two tails of the regularised incomplete gamma function; they add up to 1. */
interface Tails {
  lower: number
  upper: number
}

/**
 * Power series below x = a + 1, Legendre's continued fraction (by the modified Lentz method) above;
 * both scaled by the Poisson density so that large shapes keep their digits.
 *
 * The library's own incomplete gamma function is not used: for shapes above 200 and x above the
 * shape it is wrong from the third to the fifth digit (shape 1000, x 1100: upper tail 0.0010684
 * where 0.0010593 is right).
 *
 * Source: Gautschi, A Computational Procedure for Incomplete Gamma Functions, ACM TOMS 5 (1979);
 * Abramowitz and Stegun 6.5.29 and 6.5.31.
 */
function tails(shape: number, x: number): Tails {
  if (x === 0) return { lower: 0, upper: 1 }
  if (x === Infinity) return { lower: 1, upper: 0 }
  const density = poissonDensity(shape, x)
  if (x < shape + 1) {
    const lower = density * powerSeries(shape, x)
    return { lower, upper: 1 - lower }
  }
  const upper = density * shape * continuedFraction(shape, x)
  return { lower: 1 - upper, upper }
}

function powerSeries(shape: number, x: number): number {
  let term = 1
  let sum = 1
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= x / (shape + n)
    sum += term
  }
  return sum
}

function continuedFraction(shape: number, x: number): number {
  let b = x + 1 - shape
  let c = 1e300
  let d = 1 / b
  let fraction = d
  for (let n = 1; ; n++) {
    const a = n * (shape - n)
    b += 2
    d = 1 / (b + a * d)
    c = b + a / c
    const factor = c * d
    fraction *= factor
    if (Math.abs(factor - 1) < 1e-16) return fraction
  }
}

function requireArguments(shape: number, x: number): void {
  requirePositive(shape, 'shape of the gamma function')
  if (x !== Infinity) requireNotNegative(x, 'argument of the incomplete gamma function')
}

/**
 * Regularised lower incomplete gamma function P(shape, x).
 *
 * Units: none. Errors: RangeError unless the shape is above zero and x zero or more.
 */
export function regularisedGamma(shape: number, x: number): number {
  requireArguments(shape, x)
  return tails(shape, x).lower
}

/** Regularised upper incomplete gamma function Q(shape, x) = 1 − P, without the loss of digits. */
export function regularisedGammaUpper(shape: number, x: number): number {
  requireArguments(shape, x)
  return tails(shape, x).upper
}

/**
 * The x at which the regularised lower incomplete gamma function reaches a probability.
 *
 * Newton's method on the logarithm of the nearer tail over ln x, from the guess of Wilson and
 * Hilferty (1931), or from the first term of the power series where x is small.
 *
 * Units: none. Errors: RangeError for a probability outside 0 … 1 or a shape not above zero.
 */
export function regularisedGammaQuantile(probability: number, shape: number): number {
  requirePositive(shape, 'shape of the gamma function')
  requireProbability(probability, 'probability')
  if (probability === 0) return 0
  if (probability === 1) return Infinity
  const upper = probability > 0.5
  const lnTarget = upper ? Math.log1p(-probability) : Math.log(probability)
  const at = (lnX: number) => {
    const x = Math.exp(lnX)
    const tail = upper ? tails(shape, x).upper : tails(shape, x).lower
    const slope = (shape * poissonDensity(shape, x)) / tail
    const value = Math.log(tail) - lnTarget
    return upper ? { value: -value, slope } : { value, slope }
  }
  return Math.exp(
    bracketedNewton({ at, lower: -745 / Math.min(1, shape), upper: 709, guess: lnGuess(probability, shape) }),
  )
}

function lnGuess(probability: number, shape: number): number {
  const cubeRoot = 1 - 1 / (9 * shape) + normalQuantile(probability) / Math.sqrt(9 * shape)
  const firstTerm = (Math.log(probability) + lnGamma(shape + 1)) / shape
  return cubeRoot > 0.3 ? Math.log(shape) + 3 * Math.log(cubeRoot) : firstTerm
}
