/** Which column of a table is which, by its place; what no heading names is left out. */
export type ColumnPlaces<Name extends string> = Readonly<Partial<Record<Name, number>>>

/**
 * Finds columns by their headings: of the names of a column the earlier go
 * first, and no heading is two columns. Signs, capitals and units do not tell
 * headings apart.
 */
export function columnPlaces<Name extends string>(
  headings: readonly string[],
  names: Readonly<Record<Name, readonly string[]>>,
): ColumnPlaces<Name> {
  const bare = headings.map(bareHeading)
  const places: Partial<Record<Name, number>> = {}
  const taken = new Set<number>()
  for (const column of Object.keys(names) as Name[]) {
    const at = names[column]
      .map(bareHeading)
      .map((name) => bare.findIndex((heading, index) => heading === name && !taken.has(index)))
      .find((index) => index >= 0)
    if (at === undefined) continue
    places[column] = at
    taken.add(at)
  }
  return places
}

const UNIT_AT_END = /[\s_./([-]+(mm|mils?|thou|inch(?:es)?|in|degrees?|deg)[)\]]?\s*$/i

const bareHeading = (heading: string): string =>
  heading
    .slice(0, 80)
    .replace(UNIT_AT_END, '')
    .replace(/\([^)]*\)|\[[^\]]*\]/g, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')

/** The unit that a heading ends with: "X (mm)", "Center-X [mil]"; undefined where it says none. */
export const unitOfHeading = (heading: string): string | undefined =>
  UNIT_AT_END.exec(heading.slice(0, 80))?.[1]?.toLowerCase()
