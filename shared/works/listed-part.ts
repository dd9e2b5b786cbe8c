import type { ListedRow } from '@/shared/plan/parameters/parts-list'
import type { PartValues } from './part-columns'

/** A part of the works that a programme's parts list names, as it is described today. */
export interface ListedPart {
  /** Its part number. */
  readonly code: string
  readonly revision: number
  /** Of its values, as an approval covers them. */
  readonly digest: string
  readonly approved: boolean
  readonly withdrawn: boolean
  readonly values: PartValues
}

/** The numbers that a value of the parts list names, each once; none where there is no list. */
export const partsNamedIn = (list: unknown): string[] =>
  Array.isArray(list)
    ? [...new Set((list as readonly Partial<ListedRow>[]).flatMap(({ part }) => part?.trim() ?? []))]
    : []
