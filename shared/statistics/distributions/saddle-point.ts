import gammaln from '@stdlib/math-base-special-gammaln'

const HALF_LN_TWO_PI = 0.5 * Math.log(2 * Math.PI)

/**
 * Error of Stirling's formula: ln Γ(z + 1) − [(z + ½) ln z − z + ½ ln 2π].
 *
 * Source: the series of Abramowitz and Stegun, Handbook of Mathematical Functions, 6.1.41; used as in
 * Loader, Fast and Accurate Computation of Binomial Probabilities (2000).
 */
export function stirlingError(z: number): number {
  if (z < 16) return gammaln(z + 1) - (z + 0.5) * Math.log(z) + z - HALF_LN_TWO_PI
  const s = 1 / (z * z)
  return (1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s * (1 / 1188 - (s * 691) / 360360))))) / z
}

/**
 * Deviance x ln(x / m) + m − x, without cancellation where x is close to m.
 *
 * Source: Loader (2000), section 3.
 */
export function deviance(x: number, mean: number): number {
  if (x === 0) return mean
  const difference = x - mean
  if (Math.abs(difference) > 0.1 * (x + mean)) return x * Math.log(x / mean) - difference
  const v = difference / (x + mean)
  let sum = difference * v
  let term = 2 * x * v
  for (let odd = 3; ; odd += 2) {
    term *= v * v
    const next = sum + term / odd
    if (next === sum) return sum
    sum = next
  }
}

/**
 * Poisson density e^−m m^x / Γ(x + 1) for any x of zero or more, whole or not.
 *
 * Source: Loader (2000), section 4.
 */
export function poissonDensity(x: number, mean: number): number {
  if (mean === 0) return x === 0 ? 1 : 0
  if (x === 0) return Math.exp(-mean)
  if (x < 1) return Math.exp(x * Math.log(mean) - mean - gammaln(x + 1))
  return Math.exp(-stirlingError(x) - deviance(x, mean)) / Math.sqrt(2 * Math.PI * x)
}

/**
 * Binomial probability of `successes` in `trials`, with the chance of failure given apart so that
 * neither loses digits.
 *
 * Source: Loader (2000), section 2.
 */
export function binomialDensity(successes: number, trials: number, chance: number, failing: number): number {
  if (chance === 0) return successes === 0 ? 1 : 0
  if (failing === 0) return successes === trials ? 1 : 0
  const failures = trials - successes
  if (successes === 0) return Math.exp(trials * (chance < 0.5 ? Math.log1p(-chance) : Math.log(failing)))
  if (failures === 0) return Math.exp(trials * (failing < 0.5 ? Math.log1p(-failing) : Math.log(chance)))
  const exponent =
    stirlingError(trials) -
    stirlingError(successes) -
    stirlingError(failures) -
    deviance(successes, trials * chance) -
    deviance(failures, trials * failing)
  return Math.exp(exponent) * Math.sqrt(trials / (2 * Math.PI * successes * failures))
}
