/** One thermocouple's trace: times in seconds, rising, and temperatures in °C. */
export interface ThermalTrace {
  readonly timesS: readonly number[]
  readonly temperaturesC: readonly number[]
}

/** What a trace amounts to, in the terms a profile is specified in. */
export interface TraceSummary {
  readonly peakC: number
  readonly peakAtS: number
  /** Up to the peak; NaN where the trace holds no stretch of the slope's window before it. */
  readonly steepestRiseKPerS: number
  /** From the peak on, and NaN likewise. */
  readonly steepestFallKPerS: number
  readonly timeAboveLiquidusS: number
  /** Time between the soak's two temperatures on the way up. */
  readonly soakS: number
}

/**
 * Peak, slopes, soak and time above liquidus of one trace. Slopes are taken
 * over at least `slopeWindowS`, so that one noisy sample is no ramp, and are not a
 * number where the trace is too short to tell them; between
 * samples the temperature is taken as straight.
 *
 * Units: s, °C, K/s. Throws RangeError when the trace has fewer than two
 * samples, or times that do not rise.
 * Source: definitions of the profile's terms; computed.
 */
export function summariseTrace(
  trace: ThermalTrace,
  spec: { liquidusC: number; soakFromC: number; soakToC: number; slopeWindowS: number },
): TraceSummary {
  checkTrace(trace)
  const { timesS, temperaturesC } = trace
  let peak = 0
  for (let i = 1; i < temperaturesC.length; i++) if (temperaturesC[i]! > temperaturesC[peak]!) peak = i
  return {
    peakC: temperaturesC[peak]!,
    peakAtS: timesS[peak]!,
    steepestRiseKPerS: steepestSlope(trace, 0, peak, spec.slopeWindowS),
    steepestFallKPerS: -steepestSlope(trace, peak, temperaturesC.length - 1, spec.slopeWindowS, -1),
    timeAboveLiquidusS: timeBetween(trace, spec.liquidusC, Infinity, temperaturesC.length - 1),
    soakS: timeBetween(trace, spec.soakFromC, spec.soakToC, peak),
  }
}

/** The greatest difference between traces sampled at the same times, in K, and when it occurred. */
export function greatestDifference(traces: readonly ThermalTrace[]): { differenceK: number; atS: number } {
  const first = traces[0]
  if (!first) throw new RangeError('A difference needs at least one trace.')
  let greatest = { differenceK: 0, atS: first.timesS[0] ?? 0 }
  for (let i = 0; i < first.timesS.length; i++) {
    let lowest = Infinity
    let highest = -Infinity
    for (const trace of traces) {
      const temperature = trace.temperaturesC[i] ?? Number.NaN
      if (temperature < lowest) lowest = temperature
      if (temperature > highest) highest = temperature
    }
    if (highest - lowest > greatest.differenceK)
      greatest = { differenceK: highest - lowest, atS: first.timesS[i]! }
  }
  return greatest
}

function checkTrace({ timesS, temperaturesC }: ThermalTrace): void {
  if (timesS.length !== temperaturesC.length || timesS.length < 2)
    throw new RangeError('A thermal trace needs two or more samples, each with time and temperature.')
  for (let i = 0; i < timesS.length; i++) {
    if (!Number.isFinite(temperaturesC[i])) throw new RangeError(`Sample ${i + 1} has no temperature.`)
    if (i > 0 && !(timesS[i]! > timesS[i - 1]!))
      throw new RangeError(`Sample ${i + 1} is not later than the one before it.`)
  }
}

/**
 * The steepest slope between two samples, upwards (`sign` 1) or downwards (−1),
 * each sample against the first later one at least a window away; NaN without
 * such a pair.
 */
function steepestSlope(
  { timesS, temperaturesC }: ThermalTrace,
  from: number,
  to: number,
  windowS: number,
  sign: 1 | -1 = 1,
): number {
  let steepest = Number.NaN
  let later = from + 1
  for (let i = from; i < to; i++) {
    later = Math.max(later, i + 1)
    while (later <= to && timesS[later]! - timesS[i]! < windowS) later++
    if (later > to) break
    const slope = (temperaturesC[later]! - temperaturesC[i]!) / (timesS[later]! - timesS[i]!)
    if (!(sign * slope <= sign * steepest)) steepest = slope
  }
  return steepest
}

/** Time spent between two temperatures up to a sample, crossings interpolated. */
function timeBetween(
  { timesS, temperaturesC }: ThermalTrace,
  lowC: number,
  highC: number,
  upTo: number,
): number {
  let time = 0
  for (let i = 1; i <= upTo; i++) {
    const from = temperaturesC[i - 1]!
    const to = temperaturesC[i]!
    const spanS = timesS[i]! - timesS[i - 1]!
    const bottom = Math.min(from, to)
    const top = Math.max(from, to)
    if (bottom === top) time += bottom >= lowC && bottom <= highC ? spanS : 0
    else time += spanS * Math.max(0, (Math.min(top, highC) - Math.max(bottom, lowC)) / (top - bottom))
  }
  return time
}
