import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import { coatingColumns } from '@/shared/plan/parameters/finishes'
import { leadColumns } from '@/shared/plan/parameters/lead-holes'
import type { ListedPart } from './listed-part'

/** A value typed in a programme that a part of its list has otherwise. */
export interface Contradiction {
  readonly column: string
  readonly label: string
  readonly typed: string | number | boolean
  readonly ofPart: string | number | boolean
  readonly typedInWords: string
  readonly ofPartInWords: string
  readonly unit: Extract<Column, { kind: 'number' }>['unit'] | undefined
}

const COLUMNS: Readonly<Record<'leads' | 'coatings', Readonly<Record<string, Column>>>> = {
  leads: leadColumns,
  coatings: coatingColumns,
}

/** Where a row of the hole table or of the finishes and a part both say a value, and not the same. */
export function contradictions(
  row: Readonly<Record<string, unknown>>,
  { values }: ListedPart,
  said: keyof typeof COLUMNS,
): Contradiction[] {
  const described = values as Readonly<Record<string, unknown>>
  return Object.entries(COLUMNS[said]).flatMap(([column, declared]) => {
    const [typed, ofPart] = [row[column], described[column]]
    if (!isSaid(typed) || !isSaid(ofPart) || typed === ofPart) return []
    const { inWords } = kindOf(declared)
    return [
      {
        column,
        label: declared.label,
        typed,
        ofPart,
        typedInWords: inWords(declared, typed),
        ofPartInWords: inWords(declared, ofPart),
        unit: declared.kind === 'number' ? declared.unit : undefined,
      },
    ]
  })
}

const isSaid = (value: unknown): value is string | number | boolean => value !== undefined && value !== null
