import type { ListedRow } from '@/shared/plan/parameters/parts-list'
import { referencesInBrief, referencesIn } from '@/shared/works/references'
import type { Board } from '../board'

type Proposed = Partial<ListedRow>

/**
 * The parts list as the board's files have it: rows of the list that came with
 * them, each keeping what stands for its part, else the rows that stand; the
 * side of a row that says none is where all of its components are placed. What
 * has no reference, as solder, stays as it stands. Undefined where neither file
 * is there.
 */
export function proposedPartsList(
  { listed, placement }: Pick<Board, 'listed' | 'placement'>,
  before: readonly ListedRow[],
): Proposed[] | undefined {
  const placed = placement?.placed ?? []
  if (!listed && placed.length === 0) return undefined
  const sides = new Map(placed.map(({ reference, side }) => [reference.toUpperCase(), side]))
  const rows = listed ? [...listed.map((row) => rowFrom(row, before)), ...before.filter(isNameless)] : before
  return rows.map((row) => {
    const side = row.side ?? sideOf(referencesIn(row.references ?? '').names ?? [], sides)
    return { ...row, ...(side && { side }) }
  })
}

type FileRow = NonNullable<Board['listed']>[number]

function rowFrom({ names, part, quantity }: FileRow, before: readonly ListedRow[]): Proposed {
  const same = before.find((row) => row.part.toUpperCase() === part?.toUpperCase())
  const pieces = quantity ?? (names.length || undefined)
  return {
    references: referencesInBrief(names),
    ...(part !== undefined && { part: same?.part ?? part }),
    ...(pieces !== undefined && { quantity: pieces }),
    ...(same?.soldered && { soldered: same.soldered }),
    ...(same?.side && { side: same.side }),
  }
}

const isNameless = ({ references }: ListedRow): boolean => (references ?? '').trim() === ''

/** Where all of them are placed; undefined where they are on both sides, or one is placed nowhere. */
function sideOf(
  names: readonly string[],
  sides: ReadonlyMap<string, 'top' | 'bottom' | undefined>,
): ListedRow['side'] {
  const on = new Set(names.map((name) => sides.get(name)))
  return on.size === 1 ? [...on][0] : undefined
}
