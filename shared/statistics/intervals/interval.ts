/** Two bounds that hold the unknown value with a stated confidence. Same unit as the estimate. */
export interface Interval {
  lower: number
  upper: number
}
