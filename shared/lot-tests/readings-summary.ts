/** The sides on which readings are held; in the readings' own unit. */
export interface ReadingLimits {
  readonly atLeast?: number
  readonly atMost?: number
}

/** Readings in a few numbers, in their own unit. */
export interface ReadingsSummary {
  readonly count: number
  readonly outside: number
  readonly lowest: number
  readonly mean: number
  readonly highest: number
  /** The reading least within its limits, or furthest beyond them; undefined where there is no limit. */
  readonly worst: number | undefined
}

/** Whether a reading lies beyond a limit; one that meets it exactly does not, and one that is no number does. */
export const isOutside = (value: number, { atLeast, atMost }: ReadingLimits): boolean =>
  (atLeast !== undefined && !(value >= atLeast)) || (atMost !== undefined && !(value <= atMost))

/** Number, ends, mean and worst of readings; undefined where there are none. */
export function readingsSummary(
  values: readonly number[],
  limits: ReadingLimits,
): ReadingsSummary | undefined {
  const [first] = values
  if (first === undefined) return undefined
  let [sum, outside, lowest, highest, worst] = [0, 0, first, first, first]
  for (const value of values) {
    sum += value
    if (isOutside(value, limits)) outside++
    if (value < lowest) lowest = value
    if (value > highest) highest = value
    if (roomLeft(value, limits) < roomLeft(worst, limits)) worst = value
  }
  const limited = limits.atLeast !== undefined || limits.atMost !== undefined
  return {
    count: values.length,
    outside,
    lowest,
    mean: sum / values.length,
    highest,
    worst: limited ? worst : undefined,
  }
}

/** How far a reading keeps from the nearest limit; less than zero beyond it. */
const roomLeft = (value: number, { atLeast = -Infinity, atMost = Infinity }: ReadingLimits): number =>
  Math.min(value - atLeast, atMost - value)
