interface Search {
  /** The input as specified, where the rule does not meet. */
  readonly from: number
  /** The farthest value worth proposing in the direction that mends. */
  readonly to: number
  /** True where the rule would meet; must not change back on the way from `from` to `to`. */
  readonly meets: (value: number) => boolean
  /** How near to the border the answer must lie, in the input's unit. */
  readonly tolerance: number
  readonly maxSteps?: number
}

/**
 * The smallest change of one declared numeric input that makes a rule meet, by
 * bisection. The answer itself meets and lies within the tolerance of the
 * border; undefined when even `to` does not meet.
 * Throws RangeError on a tolerance that is not positive or bounds that are not finite.
 */
export function bisect({ from, to, meets, tolerance, maxSteps = 60 }: Search): number | undefined {
  if (!(tolerance > 0)) throw new RangeError('The tolerance of a search must be greater than zero.')
  if (!Number.isFinite(from) || !Number.isFinite(to)) {
    throw new RangeError('The bounds of a search must be finite numbers.')
  }
  if (meets(from)) return from
  if (!meets(to)) return undefined
  let failing = from
  let meeting = to
  for (let step = 0; step < maxSteps && Math.abs(meeting - failing) > tolerance; step++) {
    const middle = failing + (meeting - failing) / 2
    if (meets(middle)) meeting = middle
    else failing = middle
  }
  return meeting
}

/**
 * A value rounded up to a step a person would write down; steps such as 0.01
 * do not leave binary rounding error behind.
 */
export const roundedUp = (value: number, step: number): number => onStep(Math.ceil, value, step)

/** A value rounded down to a step a person would write down. */
export const roundedDown = (value: number, step: number): number => onStep(Math.floor, value, step)

/**
 * The next step above a value, even when the value lies on a step: for aims that
 * must not fall back into a guard band by binary rounding error.
 */
export const stepAbove = (value: number, step: number): number => roundedUp(value + 1e-6 * step, step)

/** The next step below a value, even when the value lies on a step. */
export const stepBelow = (value: number, step: number): number => roundedDown(value - 1e-6 * step, step)

/** A hair of a step, so that 0.3 / 0.1 = 2.9999999999999996 counts as three steps. */
const HAIR = 1e-9

function onStep(whole: (value: number) => number, value: number, step: number): number {
  if (!(step > 0)) throw new RangeError('A step to round to must be greater than zero.')
  const steps = value / step
  const nearest = Math.round(steps)
  const count = Math.abs(steps - nearest) < HAIR ? nearest : whole(steps)
  return Number((count * step).toPrecision(12))
}
