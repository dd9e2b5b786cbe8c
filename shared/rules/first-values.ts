import { readableOf, type AnyRule, type Readable } from './rule'

/** A value that is worth stating early, and the checks that can be judged from then on. */
export interface FirstValue {
  readonly parameter: string
  /** Ids of the rules that it opens, with all values before it stated. */
  readonly opens: readonly string[]
}

/**
 * The values to state first, in order: each opens the most checks that those before it leave shut, as long as one value
 * alone opens any. Of several that open as many, one box comes before a table, then what brings more of the others
 * nearer. A check is open
 * once all values are stated that it cannot do without; those that wait for records too are left out, since no value
 * opens them. All of it follows from the rules' declared reads.
 */
export function firstValues(rules: readonly AnyRule[], stated: Iterable<string> = []): FirstValue[] {
  const known = new Set(stated)
  let shut = rules.flatMap((rule) => shutUntil(rule, known))
  const found: FirstValue[] = []
  for (;;) {
    const next = best([...new Set(shut.flatMap(({ wants }) => [...wants]))], shut)
    if (next === undefined) return found
    const opens = openedBy(next, shut)
    found.push({ parameter: next, opens: opens.map(({ id }) => id) })
    shut = shut
      .filter((one) => !opens.includes(one))
      .map((one) => ({ ...one, wants: new Set([...one.wants].filter((key) => key !== next)) }))
  }
}

/** A check, and the values that it still waits for. */
interface Shut {
  readonly id: string
  readonly wants: ReadonlySet<string>
  /** Those of them that are tables. */
  readonly tables: ReadonlySet<string>
}

function shutUntil({ id, reads }: AnyRule, known: ReadonlySet<string>): Shut[] {
  const needed = Object.values(reads)
    .filter(({ source }) => source !== 'optional')
    .map(readableOf)
  if (needed.some(({ source }) => source === 'records')) return []
  const wants = needed.flatMap((read) => (read.source === 'parameter' && !known.has(read.key) ? read : []))
  const tables = wants.filter(({ shape }) => shape.kind === 'table')
  return wants.length > 0 ? [{ id, wants: keysOf(wants), tables: keysOf(tables) }] : []
}

const keysOf = (reads: readonly Readable[]): ReadonlySet<string> => new Set(reads.map(({ key }) => key))

const openedBy = (key: string, shut: readonly Shut[]): readonly Shut[] =>
  shut.filter(({ wants }) => wants.size === 1 && wants.has(key))

/** The value that opens the most; undefined when none opens any. */
function best(keys: readonly string[], shut: readonly Shut[]): string | undefined {
  const ranked = keys.map((key) => ({
    key,
    opens: openedBy(key, shut).length,
    boxes: shut.some(({ tables }) => tables.has(key)) ? 0 : 1,
    nears: shut.reduce((sum, { wants }) => sum + (wants.has(key) ? 1 / wants.size : 0), 0),
  }))
  const [first] = ranked.sort((a, b) => b.opens - a.opens || b.boxes - a.boxes || b.nears - a.nears)
  return first && first.opens > 0 ? first.key : undefined
}
