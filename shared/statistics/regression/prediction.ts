import { requireOpenFraction } from '@/shared/statistics/argument-checks'
import { studentTQuantile } from '@/shared/statistics/distributions/student-t'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { requireFinite } from '@/shared/statistics/reading-checks'
import { valueAt } from './straight-line'
import type { LineFit } from './straight-line'

export type Prediction = {
  value: number
  /** Standard error of the line itself at x. */
  lineError: number
  /** Where the line lies. */
  confidenceInterval: Interval
  /** Where one further reading would lie. */
  predictionInterval: Interval
}

/** Two-sided intervals at x, for the line and for one more reading. Independent normal errors. */
export function predictAt(fit: LineFit, x: number, confidence: number): Prediction {
  requireFinite(x, 'value of x')
  requireOpenFraction(confidence, 'confidence')
  const value = valueAt(fit, x)
  const t = studentTQuantile((1 + confidence) / 2, fit.degreesOfFreedom)
  const lineError = fit.residualSigma * Math.sqrt(1 / fit.points + (x - fit.meanX) ** 2 / fit.spreadX)
  const about = (reach: number): Interval => ({ lower: value - reach, upper: value + reach })
  return {
    value,
    lineError,
    confidenceInterval: about(t * lineError),
    predictionInterval: about(t * Math.hypot(fit.residualSigma, lineError)),
  }
}
