/**
 * How often two inspectors' calls fell together: `table[i][j]` objects that the
 * first put in category i and the second in j. Throws RangeError when the lists
 * differ in length or a call is in no category.
 */
export function crossTable<Category>(
  first: readonly Category[],
  second: readonly Category[],
  categories: readonly Category[],
): number[][] {
  if (first.length !== second.length)
    throw new RangeError(`One inspector made ${first.length} calls, the other ${second.length}.`)
  const table = categories.map(() => categories.map(() => 0))
  first.forEach((call, index) => {
    table[placeOf(call, categories)]![placeOf(second[index]!, categories)]! += 1
  })
  return table
}

/** For any number of inspectors: how many of them put each object in each category, a row an object. */
export function callCounts<Category>(
  calls: readonly (readonly Category[])[],
  categories: readonly Category[],
): number[][] {
  return calls.map((ofObject) => {
    const row = categories.map(() => 0)
    for (const call of ofObject) row[placeOf(call, categories)]! += 1
    return row
  })
}

function placeOf<Category>(call: Category, categories: readonly Category[]): number {
  const place = categories.indexOf(call)
  if (place < 0) throw new RangeError(`The call “${String(call)}” is in none of the categories.`)
  return place
}
