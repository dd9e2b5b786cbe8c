import { requireReadings } from '@/shared/statistics/reading-checks'
import { mean, sumOfSquaredDeviations } from '@/shared/statistics/sample-moments'

/** A least-squares straight line y = intercept + slope · x with its errors; units those of x and y. */
export type LineFit = {
  points: number
  intercept: number
  slope: number
  interceptError: number
  slopeError: number
  /** Standard deviation of the points about the line. */
  residualSigma: number
  degreesOfFreedom: number
  /** Share of the variance of y that the line takes up; 1 when y does not vary. */
  rSquared: number
  meanX: number
  meanY: number
  /** Sum of squared deviations of x. */
  spreadX: number
  firstX: number
  lastX: number
}

/**
 * Fits a straight line; errors lie in y alone, of one size, independent. Throws
 * RangeError below three points or when all x are equal. Source: the usual
 * least squares; checked against the certified Norris data of the NIST StRD.
 */
export function fitLine(x: readonly number[], y: readonly number[]): LineFit {
  requireReadings(x, 'values of x', 3)
  requireReadings(y, 'values of y', 3)
  if (x.length !== y.length) throw new RangeError(`There are ${x.length} values of x but ${y.length} of y.`)
  const meanX = mean(x)
  const meanY = mean(y)
  const spreadX = sumOfSquaredDeviations(x)
  if (!(spreadX > 0)) throw new RangeError('A line needs at least two different values of x.')
  const slope = x.reduce((sum, at, index) => sum + (at - meanX) * (y[index]! - meanY), 0) / spreadX
  const residuals = x.reduce((sum, at, index) => sum + (y[index]! - meanY - slope * (at - meanX)) ** 2, 0)
  const degreesOfFreedom = x.length - 2
  const residualSigma = Math.sqrt(residuals / degreesOfFreedom)
  const spreadY = sumOfSquaredDeviations(y)
  return {
    points: x.length,
    intercept: meanY - slope * meanX,
    slope,
    interceptError: residualSigma * Math.sqrt(1 / x.length + meanX ** 2 / spreadX),
    slopeError: residualSigma / Math.sqrt(spreadX),
    residualSigma,
    degreesOfFreedom,
    rSquared: spreadY === 0 ? 1 : 1 - residuals / spreadY,
    meanX,
    meanY,
    spreadX,
    firstX: x.reduce((min, at) => Math.min(min, at), Infinity),
    lastX: x.reduce((max, at) => Math.max(max, at), -Infinity),
  }
}

/** The line's value at x. Reckoned from the middle of the data, where it is known best. */
export const valueAt = ({ meanX, meanY, slope }: LineFit, x: number): number => meanY + slope * (x - meanX)
