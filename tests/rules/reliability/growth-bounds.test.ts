import { describe, expect, test } from 'vitest'
import { crowAmsaaGrowth } from '@/shared/reliability/growth/crow-amsaa'
import {
  currentMeanTimeInterval,
  expectedFailures,
  expectedFailuresInterval,
} from '@/shared/reliability/growth/crow-amsaa-bounds'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import reference from '@/tests/reference/statistics/reliability.json'

// The published worked example of 22 failures, ended by the last at 620 h (read).
const { times } = reference.growth
const fit = crowAmsaaGrowth(times, { estimate: 'maximum likelihood' })
const seen = { fit, failures: times.length, end: 620 }
const varianceOfLog = ({ lower, upper }: { lower: number; upper: number }, confidence: number): number =>
  (Math.log(upper / lower) / 2 / normalQuantile((1 + confidence) / 2)) ** 2

describe('bounds of the power law', () => {
  // The same example prints, by Fisher's matrix from rounded constants: variance of λ 0.13519969 and of the
  // intensity at 620 h 0.0000431393 (read). λ is the failures expected by 1 h.
  test('the published variances of scale and of intensity at the end', () => {
    const ofScale = varianceOfLog(expectedFailuresInterval(seen, 1, 0.9), 0.9) * fit.scale ** 2
    expect(Math.abs(ofScale / 0.13519969 - 1)).toBeLessThan(0.005)
    const intensity = 1 / fit.currentMeanTime
    const ofIntensity = varianceOfLog(currentMeanTimeInterval(seen, 0.9), 0.9) * intensity ** 2
    expect(Math.abs(ofIntensity / 0.0000431393 - 1)).toBeLessThan(0.005)
  })

  test('the line meets the count at the end, and the bounds are nearest together there', () => {
    expect(expectedFailures(fit, 620)).toBeCloseTo(22, 9)
    const width = (time: number): number => {
      const { lower, upper } = expectedFailuresInterval(seen, time, 0.9)
      return upper / lower
    }
    expect(width(620)).toBeLessThan(width(300))
    expect(width(300)).toBeLessThan(width(10))
  })

  test('more confidence is wider, and the value lies within', () => {
    const [narrow, wide] = [currentMeanTimeInterval(seen, 0.8), currentMeanTimeInterval(seen, 0.95)]
    expect(wide.lower).toBeLessThan(narrow.lower)
    expect(narrow.lower).toBeLessThan(fit.currentMeanTime)
    expect(fit.currentMeanTime).toBeLessThan(narrow.upper)
    expect(narrow.upper).toBeLessThan(wide.upper)
  })

  test('nothing without time, failures or confidence', () => {
    expect(() => expectedFailuresInterval(seen, 0, 0.9)).toThrow(RangeError)
    expect(() => expectedFailuresInterval({ ...seen, failures: 0 }, 5, 0.9)).toThrow(RangeError)
    expect(() => currentMeanTimeInterval(seen, 1)).toThrow(RangeError)
  })
})
