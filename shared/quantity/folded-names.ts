interface Numbered {
  readonly prefix: string
  readonly digits: string
}

/** A name that ends in a number, such as R12 or A-007; undefined for any other, a range among them. */
function numbered(name: string): Numbered | undefined {
  const digits = /\d{1,9}$/.exec(name)?.[0]
  if (digits === undefined || name.includes('–')) return undefined
  return { prefix: name.slice(0, name.length - digits.length), digits }
}

const follows = (before: Numbered, next: Numbered): boolean =>
  before.prefix === next.prefix &&
  Number(next.digits) === Number(before.digits) + 1 &&
  (before.digits.length === next.digits.length || !before.digits.startsWith('0'))

/**
 * Every name once, in order, with three or more that count on from each other as
 * a range: R1, R2, R3, R7 and A-1 are "A-1, R1–R3, R7". None is left out.
 */
export function foldedNames(names: Iterable<string>): string[] {
  const sorted = [...new Set(names)].sort((one, other) =>
    one.localeCompare(other, 'en', { numeric: true, sensitivity: 'variant' }),
  )
  const runs: string[][] = []
  for (const name of sorted) {
    const run = runs.at(-1)
    const [before, next] = [run && numbered(run[run.length - 1]!), numbered(name)]
    if (run && before && next && follows(before, next)) run.push(name)
    else runs.push([name])
  }
  return runs.flatMap((run) => (run.length > 2 ? [`${run[0]}–${run[run.length - 1]}`] : run))
}

/** The same as a list in a sentence. */
export const foldedList = (names: Iterable<string>): string => foldedNames(names).join(', ')
