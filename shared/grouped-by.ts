/** Rows, or what is wanted of each, by a key of theirs: the keys and the rows of each in the order they come. */
export function groupedBy<T, K, V = T>(
  rows: Iterable<T>,
  keyOf: (row: T) => K,
  valueOf: (row: T) => V = (row) => row as unknown as V,
): Map<K, V[]> {
  const groups = new Map<K, V[]>()
  for (const row of rows) {
    const key = keyOf(row)
    const group = groups.get(key)
    if (group) group.push(valueOf(row))
    else groups.set(key, [valueOf(row)])
  }
  return groups
}
