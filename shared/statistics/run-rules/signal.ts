/** Above or below the centre, up or down along the chart, or neither. */
export type SignalDirection = 'above' | 'below' | 'rising' | 'falling' | 'either'

/** A rule broken on a chart: by which points, and where an observer would first have known. */
export type Signal = {
  ruleId: string
  direction: SignalDirection
  /** The point that completed the pattern. */
  soundedAt: number
  /** All points that make up the pattern, ascending, counted from 0; an unbroken pattern is one signal. */
  points: readonly number[]
}
