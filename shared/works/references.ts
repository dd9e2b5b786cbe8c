/** What stands in a cell of references: the names it lists, or the text that is no reference. */
export type References =
  { readonly names: readonly string[] } | { readonly unreadable: string; readonly names?: never }

const NAME = /^([A-Za-z]+[-_]?)(\d{1,6})([A-Za-z]?)$/
const RANGE = /^([A-Za-z]+[-_]?)(\d{1,6})(?:[-–—]|\.\.)([A-Za-z]+[-_]?)?(\d{1,6})$/
/** More than a board of the largest kind has of one part. */
const MOST = 10_000

/** "R1-R10, R12" as the names it stands for, in their order; ranges count up. Capitals do not tell names apart. */
export function referencesIn(text: string): References {
  const joined = text.trim().replace(/\s*([-–—]|\.\.)\s*/g, '$1')
  const names: string[] = []
  for (const piece of joined.split(/[\s,;]+/).filter((part) => part !== '')) {
    const these = namesOf(piece.toUpperCase())
    if (!these || names.length + these.length > MOST) return { unreadable: piece }
    names.push(...these)
  }
  return { names }
}

function namesOf(piece: string): readonly string[] | undefined {
  if (NAME.test(piece)) return [piece]
  const [, prefix, first, prefixAgain = prefix, last] = RANGE.exec(piece) ?? []
  if (prefix === undefined || prefixAgain !== prefix) return undefined
  const [from, to] = [Number(first), Number(last)]
  if (to < from || to - from >= MOST) return undefined
  return Array.from({ length: to - from + 1 }, (_, more) => `${prefix}${from + more}`)
}

/** Names as a cell lists them: three and more that follow each other as a range, in the order of their numbers. */
export function referencesInBrief(names: readonly string[]): string {
  const sorted = [...names].sort((one, other) => one.localeCompare(other, 'en', { numeric: true }))
  const runs: string[][] = []
  for (const name of sorted) {
    const run = runs.at(-1)
    if (run && follows(run.at(-1)!, name)) run.push(name)
    else runs.push([name])
  }
  return runs.flatMap((run) => (run.length > 2 ? [`${run[0]}–${run.at(-1)}`] : run)).join(', ')
}

/** Whether a name is the next one of its kind; "R1A" and "R01" are of no range. */
function follows(before: string, name: string): boolean {
  const [, prefix, number] = /^([A-Za-z]+[-_]?)(0|[1-9]\d{0,4})$/.exec(before) ?? []
  return prefix !== undefined && name === `${prefix}${Number(number) + 1}`
}
