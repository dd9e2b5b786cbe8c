import { partsList, type ListedRow } from '@/shared/plan/parameters/parts-list'
import { commonPractice } from '@/shared/sources/provenance'
import type { Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { referencesIn } from '@/shared/works/references'

const SOURCE = commonPractice('A parts list gives as many references as pieces, and each reference once')

export const partsListCounted = rule({
  id: 'parts-list-counted',
  title: 'Parts list counted',
  why: 'A list that counts twelve pieces and names eleven places has a part too many or a joint that nobody planned; a place named twice gets one of two parts by chance.',
  formula: 'number of references = quantity; no reference in two rows',
  stage: 'specification',
  version: 1,
  reads: { list: optional(partsList) },
  judge({ list }) {
    if (!list) return notApplicable(NO_PARTS_LIST)
    const first = firstRows(list)
    return judgedByParts({
      parts: list.map((row, at) => judgeRow(row, at, list, first)),
      noun: 'rows',
      limit: 'As many references as pieces where references are listed, and none of them twice.',
      working: [],
      sources: [SOURCE],
    })
  },
})

/** Why rules on the parts list do not apply where there is none. */
export const NO_PARTS_LIST = 'No parts list is stated for this programme.'

/** The row in which each reference stands first. */
function firstRows(list: readonly ListedRow[]): ReadonlyMap<string, number> {
  const first = new Map<string, number>()
  for (const [at, { references }] of list.entries())
    for (const name of referencesIn(references ?? '').names ?? []) if (!first.has(name)) first.set(name, at)
  return first
}

function judgeRow(
  { references, part, quantity }: ListedRow,
  at: number,
  list: readonly ListedRow[],
  first: ReadonlyMap<string, number>,
): Part {
  const named = { subject: `Row ${at + 1}, ${part}`, about: { row: String(at + 1), part } }
  if (references === undefined)
    return { ...named, verdict: 'not applicable', found: 'no references are listed.' }
  const { names, ...read } = referencesIn(references)
  if (!names)
    return {
      ...named,
      verdict: 'undetermined',
      measured: { unreadable: 'unreadable' in read ? read.unreadable : '' },
      found: `“${'unreadable' in read ? read.unreadable : ''}” is no reference.`,
      remedy: { message: 'Write references as letters and a number, ranges as "R1–R10", commas between.' },
    }
  const twice = repeated(names, (name) => first.get(name) !== at)
  if (twice[0] !== undefined) {
    const where = first.get(twice[0]) ?? at
    return {
      ...named,
      verdict: 'fails',
      measured: { twice },
      found: `${twice[0]} stands twice: also in row ${where + 1}, ${list[where]?.part ?? part}.`,
      remedy: { message: `Leave ${twice.join(', ')} in one row only.` },
    }
  }
  const counted = {
    ...named,
    measured: { references: count(names.length), quantity: count(quantity, 'pieces') },
    found: `${names.length} references, quantity ${quantity}.`,
  }
  if (names.length === quantity) return { ...counted, verdict: 'meets' }
  return {
    ...counted,
    verdict: 'fails',
    remedy: {
      message: `Row ${at + 1}: quantity ${names.length}, or the references of ${quantity} pieces.`,
      cell: { parameter: partsList.key, row: at, column: 'quantity', value: names.length },
    },
  }
}

/** The names that stand twice, or elsewhere before; each once. */
function repeated(names: readonly string[], standsElsewhere: (name: string) => boolean): readonly string[] {
  const [seen, twice] = [new Set<string>(), new Set<string>()]
  for (const name of names) {
    if (seen.has(name) || standsElsewhere(name)) twice.add(name)
    seen.add(name)
  }
  return [...twice]
}
