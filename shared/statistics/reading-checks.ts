/*
 * Checks on series of readings, beside those on single arguments. Each throws a
 * RangeError that says which reading is at fault; each refuses NaN.
 */

/** A number that is neither NaN nor infinite. */
export function requireFinite(value: number, name: string): void {
  if (!Number.isFinite(value)) throw new RangeError(`The ${name} must be a finite number; it is ${value}.`)
}

export type Readings = readonly number[] | Float64Array

/** At least `min` readings, every one of them finite. */
export function requireReadings(values: Readings, name: string, min = 1): void {
  if (values.length < min) throw new RangeError(`At least ${min} ${name} are needed; ${values.length} given.`)
  for (let index = 0; index < values.length; index++)
    if (!Number.isFinite(values[index]))
      throw new RangeError(`Number ${index + 1} of the ${name} is ${values[index]}, which is no reading.`)
}

/** Rows of one length, at least `min` readings each. */
export function requireEqualRows(rows: readonly (readonly number[])[], name: string, min = 1): void {
  if (rows.length === 0) throw new RangeError(`There are no ${name}.`)
  const length = rows[0]!.length
  rows.forEach((row, index) => {
    requireReadings(row, `readings in number ${index + 1} of the ${name}`, min)
    if (row.length !== length)
      throw new RangeError(
        `Number ${index + 1} of the ${name} holds ${row.length} readings, the first ${length}.`,
      )
  })
}
