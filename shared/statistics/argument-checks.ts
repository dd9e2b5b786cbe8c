/**
 * Checks at the door of the statistics functions. Each throws a RangeError that names the argument
 * in plain words, and each refuses NaN, so that no reading that is absent can pass as a number.
 */

/** A finite number above zero. */
export function requirePositive(value: number, name: string): void {
  if (!(value > 0 && value < Infinity))
    throw new RangeError(`The ${name} must be above zero; it is ${value}.`)
}

/** A finite number of zero or more. */
export function requireNotNegative(value: number, name: string): void {
  if (!(value >= 0 && value < Infinity)) {
    throw new RangeError(`The ${name} must be zero or more; it is ${value}.`)
  }
}

/** A whole number of at least `min`. */
export function requireCount(value: number, name: string, min = 0): void {
  if (!(Number.isSafeInteger(value) && value >= min)) {
    throw new RangeError(`The ${name} must be a whole number of ${min} or more; it is ${value}.`)
  }
}

/** A whole number from zero to `max`. */
export function requireCountWithin(value: number, name: string, max: number, ofWhat: string): void {
  requireCount(value, name)
  if (value > max) throw new RangeError(`The ${name} (${value}) cannot exceed the ${ofWhat} (${max}).`)
}

/** A probability, 0 and 1 included. */
export function requireProbability(value: number, name: string): void {
  if (!(value >= 0 && value <= 1)) {
    throw new RangeError(`The ${name} must lie between 0 and 1; it is ${value}.`)
  }
}

/** A confidence, a coverage or a risk: strictly between 0 and 1. */
export function requireOpenFraction(value: number, name: string): void {
  if (!(value > 0 && value < 1)) {
    throw new RangeError(`The ${name} must lie strictly between 0 and 1; it is ${value}.`)
  }
}

/** One of the named choices that a table has. */
export function requireOneOf(value: string, name: string, choices: readonly string[]): void {
  if (!choices.includes(value))
    throw new RangeError(`The ${name} must be one of ${choices.join(', ')}; it is ${value}.`)
}

/** Any number but NaN: the argument of a distribution function may be infinite. */
export function requireNumber(value: number, name: string): void {
  if (Number.isNaN(value)) throw new RangeError(`The ${name} is not a number.`)
}
