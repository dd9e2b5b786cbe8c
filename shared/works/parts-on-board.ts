import type { ListedRow } from '@/shared/plan/parameters/parts-list'
import { groupedBy } from '@/shared/grouped-by'
import { memo } from '@/shared/memo'
import type { ListedPart } from './listed-part'
import { referencesIn } from './references'

/** A row of the parts list with its part, where the works have described it. */
export interface OnBoard {
  readonly row: ListedRow
  /** Zero-based, in the order of the list. */
  readonly at: number
  readonly names: readonly string[]
  readonly part: ListedPart | undefined
}

/** The rows of a parts list, each with the references it lists and its part. */
export function partsOnBoard(list: readonly ListedRow[], parts: readonly ListedPart[]): readonly OnBoard[] {
  const byCode = new Map(parts.map((part) => [part.code, part]))
  return list.map((row, at) => ({
    row,
    at,
    names: referencesIn(row.references ?? '').names ?? [],
    part: byCode.get(row.part),
  }))
}

/** A component of another table, as far as the parts list knows it. */
export interface KnownComponent {
  /** The rows its name stands for, and how many of its references each of them has. */
  readonly rows: readonly { readonly of: OnBoard; readonly pieces: number }[]
}

/**
 * Finds what a component of the hole table or of the finishes is on the parts list: by its references, all of which
 * must be listed, or by its part number. Undefined where the list does not know it whole.
 */
export const componentFinder = memo(
  (onBoard: readonly OnBoard[]): ((component: string) => KnownComponent | undefined) => {
    const byName = new Map(onBoard.flatMap((entry) => entry.names.map((name) => [name, entry] as const)))
    return (component) => {
      const same = onBoard.filter(({ row }) => row.part.toLowerCase() === component.trim().toLowerCase())
      if (same.length > 0) return { rows: same.map((of) => ({ of, pieces: of.row.quantity })) }
      const { names = [] } = referencesIn(component)
      const found = names.flatMap((name) => byName.get(name) ?? [])
      if (found.length === 0 || found.length < names.length) return undefined
      const grouped = groupedBy(found, (entry) => entry)
      return { rows: [...grouped].map(([of, pieces]) => ({ of, pieces: pieces.length })) }
    }
  },
)
