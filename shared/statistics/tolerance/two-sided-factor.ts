import { bracketedNewton } from '../distributions/bracketed-newton'
import { chiSquareCdf, chiSquarePdf } from '../distributions/chi-square'
import { normalCdf, normalPdf, normalQuantile } from '../distributions/normal'
import { howeFactorFrom } from './howe-factor'
import {
  independent,
  requireToleranceArguments,
  requireToleranceBasis,
  type ToleranceBasis,
  type ToleranceContent,
} from './tolerance-content'

/** One node of the integral over the error of the mean: its weight, and the squared half-width needed there. */
interface Node {
  weight: number
  halfWidthSquared: number
}

/**
 * Factor k for a two-sided tolerance interval of a normal population: mean ± k × standard deviation
 * holds at least the wanted share of the population. Exact.
 *
 * If the sample mean is off by x standard deviations, the interval must reach a half-width r(x) with
 * Φ(x + r) − Φ(x − r) = coverage; k is where the mean over x of P(k² s² ≥ r²) equals the confidence.
 *
 * Units: none (multiples of the sample standard deviation). Errors: RangeError for fewer than two
 * readings, or a coverage or confidence not strictly between 0 and 1.
 * Source: Odeh, Chou and Owen, Communications in Statistics – Simulation 16 (1987) (from memory);
 * NIST/SEMATECH e-Handbook 7.2.6.3 gives Howe's approximation of it.
 */
export function twoSidedToleranceFactor(readings: number, content: ToleranceContent): number {
  requireToleranceArguments(readings, content)
  return twoSidedFactorFrom(independent(readings), content)
}

/** The same factor where mean and spread rest on readings in groups. */
export function twoSidedFactorFrom(basis: ToleranceBasis, content: ToleranceContent): number {
  requireToleranceBasis(basis, content)
  const { effectiveReadings, degreesOfFreedom } = basis
  const nodes = nodesOverErrorOfMean(effectiveReadings, content.coverage)
  const lnRisk = Math.log1p(-content.confidence)
  const at = (lnFactor: number) => {
    const factorSquared = Math.exp(2 * lnFactor)
    let tooNarrow = 0
    let density = 0
    for (const { weight, halfWidthSquared } of nodes) {
      const needed = (degreesOfFreedom * halfWidthSquared) / factorSquared
      tooNarrow += weight * chiSquareCdf(needed, degreesOfFreedom)
      density += weight * needed * chiSquarePdf(needed, degreesOfFreedom)
    }
    return { value: lnRisk - Math.log(tooNarrow), slope: (2 * density) / tooNarrow }
  }
  const guess = Math.log(howeFactorFrom(basis, content))
  return Math.exp(bracketedNewton({ at, lower: -300, upper: 300, guess }))
}

/** Beyond this many standard deviations the normal weight no longer counts. */
const FARTHEST = 8.5

/**
 * Nodes of the trapezoidal rule over half the line (the integrand is even). Its error falls
 * exponentially with the step; r(x) has its nearest singularity at √readings × π / 2r off the real
 * line, so few readings need the finer step.
 */
function nodesOverErrorOfMean(readings: number, coverage: number): Node[] {
  const step = Math.min(0.5, 0.1 * Math.sqrt(readings))
  const nodes: Node[] = []
  for (let n = 0; n * step <= FARTHEST; n++) {
    const z = n * step
    const halfWidth = halfWidthToCover(z / Math.sqrt(readings), coverage)
    nodes.push({ weight: (n === 0 ? 1 : 2) * step * normalPdf(z), halfWidthSquared: halfWidth ** 2 })
  }
  return nodes
}

/** r with Φ(x + r) − Φ(x − r) = coverage, found on the two tails left out so that their digits count. */
function halfWidthToCover(offset: number, coverage: number): number {
  const lnLeftOut = Math.log1p(-coverage)
  const centred = normalQuantile((1 + coverage) / 2)
  const at = (halfWidth: number) => {
    const leftOut = normalCdf(offset - halfWidth) + normalCdf(-offset - halfWidth)
    const slope = (normalPdf(offset - halfWidth) + normalPdf(offset + halfWidth)) / leftOut
    return { value: lnLeftOut - Math.log(leftOut), slope }
  }
  if (offset === 0) return centred
  return bracketedNewton({ at, lower: 0.99 * centred, upper: centred + offset, guess: centred + offset / 2 })
}
