import { requireNumber, requirePositive, requireProbability } from '../argument-checks'
import { bracketedNewton } from './bracketed-newton'
import { normalCdf, normalPdf, normalQuantile } from './normal'
import { stirlingError } from './saddle-point'

/** T = (Z + noncentrality) / S, with Z standard normal and S² chi-square over its degrees of freedom. */
export interface NoncentralT {
  degreesOfFreedom: number
  noncentrality: number
}

/**
 * Probability that noncentral t is at most t.
 *
 * P(T ≤ t) is the mean of Φ(t s − δ) over the distribution of S. On u = ln s the integrand is
 * analytic, has one summit and falls away at both ends, so the trapezoidal rule over the whole line
 * converges exponentially, for any noncentrality and in both tails.
 *
 * Units: none. Errors: RangeError unless the degrees of freedom are above zero and t and δ are numbers.
 * Source: the definition (Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions 2,
 * chapter 31); the rule: Trefethen and Weideman, The Exponentially Convergent Trapezoidal Rule,
 * SIAM Review 56 (2014).
 */
export function noncentralTCdf(t: number, distribution: NoncentralT): number {
  requireArguments(t, distribution)
  return tail(t, distribution, 'lower').probability
}

/** Probability that noncentral t exceeds t. */
export function noncentralTSf(t: number, distribution: NoncentralT): number {
  requireArguments(t, distribution)
  return tail(t, distribution, 'upper').probability
}

/**
 * The t that noncentral t stays at or below with this probability; ∓Infinity at 0 and 1.
 *
 * Newton's method on the logarithm of the nearer tail over arsinh t, where heavy tails run straight.
 */
export function noncentralTQuantile(probability: number, distribution: NoncentralT): number {
  requireArguments(0, distribution)
  requireProbability(probability, 'probability')
  if (probability === 0) return -Infinity
  if (probability === 1) return Infinity
  const side = probability > 0.5 ? 'upper' : 'lower'
  const lnTarget = side === 'upper' ? Math.log1p(-probability) : Math.log(probability)
  const at = (arsinh: number) => {
    const t = Math.sinh(arsinh)
    const { probability: reached, density } = tail(t, distribution, side)
    const value = Math.log(reached) - lnTarget
    return { value: side === 'upper' ? -value : value, slope: (density / reached) * Math.sqrt(1 + t * t) }
  }
  const guess = Math.asinh(guessQuantile(probability, distribution))
  return Math.sinh(bracketedNewton({ at, lower: -700, upper: 700, guess }))
}

/**
 * From the normal approximation of t S − Z.
 *
 * Source: Johnson and Welch, Applications of the Non-central t-Distribution, Biometrika 31 (1940) (from memory).
 */
function guessQuantile(probability: number, { degreesOfFreedom, noncentrality }: NoncentralT): number {
  const z = normalQuantile(probability)
  const meanOfS = Math.exp(-1 / (4 * degreesOfFreedom))
  const varianceOfS = 1 - meanOfS * meanOfS
  const divisor = meanOfS * meanOfS - z * z * varianceOfS
  const root = meanOfS * meanOfS + varianceOfS * (noncentrality * noncentrality - z * z)
  if (!(divisor > 0.1 && root > 0)) return noncentrality + 2 * z
  return (noncentrality * meanOfS + z * Math.sqrt(root)) / divisor
}

interface Tail {
  probability: number
  /** Density of T at t. */
  density: number
}

/** Where two rules on staggered grids agree so far, their mean is right to about the square of it. */
const AGREEMENT = 1e-8
const NEGLIGIBLE = 1e-18

function tail(t: number, { degreesOfFreedom, noncentrality }: NoncentralT, side: 'lower' | 'upper'): Tail {
  if (Math.abs(t) === Infinity) return { probability: t > 0 === (side === 'lower') ? 1 : 0, density: 0 }
  const sign = side === 'lower' ? 1 : -1
  const integrand: Integrand = { degreesOfFreedom, slope: sign * t, offset: -sign * noncentrality }
  const summit = lnSummit(integrand)
  const lnScale = Math.log(degreesOfFreedom / Math.PI) / 2 - stirlingError(degreesOfFreedom / 2)
  // Fine enough from the start for the spread of ln S and for the step of Φ, of width 1/δ on that scale.
  let step = 1 / Math.sqrt(1 + 2 * degreesOfFreedom + noncentrality * noncentrality)
  let coarse = gridSum(integrand, lnScale, summit, step)
  for (;;) {
    const staggered = gridSum(integrand, lnScale, summit + step / 2, step)
    const agreed = Math.abs(coarse.probability - staggered.probability) <= AGREEMENT * coarse.probability
    coarse = {
      probability: (coarse.probability + staggered.probability) / 2,
      density: (coarse.density + staggered.density) / 2,
    }
    if (agreed || step < 1e-6) return { ...coarse, probability: Math.min(1, coarse.probability) }
    step /= 2
  }
}

/** Φ(slope · s + offset) over the distribution of S. */
interface Integrand {
  degreesOfFreedom: number
  slope: number
  offset: number
}

/** The trapezoidal rule on u = ln s: from the start outwards until the terms no longer count. */
function gridSum(integrand: Integrand, lnScale: number, start: number, step: number): Tail {
  const { degreesOfFreedom, slope, offset } = integrand
  let probability = 0
  let density = 0
  for (const direction of [1, -1]) {
    for (let n = direction === 1 ? 0 : 1; ; n++) {
      const u = start + direction * n * step
      const s = Math.exp(u)
      const weight = Math.exp(lnScale - (degreesOfFreedom / 2) * (Math.expm1(2 * u) - 2 * u))
      const x = slope * s + offset
      const term = weight * normalCdf(x)
      probability += term
      density += weight * s * normalPdf(x)
      if (!(term > NEGLIGIBLE * probability)) break
    }
  }
  return { probability: probability * step, density: density * step }
}

/** ln s at the summit of the integrand, where its logarithm's slope ν − ν s² + m s φ/Φ changes sign. */
function lnSummit({ degreesOfFreedom, slope, offset }: Integrand): number {
  const size = Math.abs(slope) * (Math.abs(slope) + Math.abs(offset) + 1)
  let low = slope < 0 ? -Math.log(2 + (4 * size) / degreesOfFreedom) : 0
  let high = slope < 0 ? 0 : Math.log(2 + (Math.abs(slope) * (Math.abs(offset) + 1)) / degreesOfFreedom)
  while (high - low > 0.01 / Math.sqrt(1 + degreesOfFreedom)) {
    const u = (low + high) / 2
    const s = Math.exp(u)
    const rising = degreesOfFreedom * (1 - s * s) + slope * s * hazard(slope * s + offset) > 0
    if (rising) low = u
    else high = u
  }
  return (low + high) / 2
}

/** φ(x) / Φ(x), by its asymptote where both vanish. */
const hazard = (x: number): number => (x < -30 ? -x - 1 / x : normalPdf(x) / normalCdf(x))

function requireArguments(t: number, { degreesOfFreedom, noncentrality }: NoncentralT): void {
  requireNumber(t, 'value of t')
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  if (!Number.isFinite(noncentrality)) {
    throw new RangeError(`The noncentrality must be a finite number; it is ${noncentrality}.`)
  }
}
