import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import type { TestMethod } from '@/shared/methods/test-method'
import { INSPECTION_COLUMNS, LOT_COLUMNS, LOT_TEST_COLUMNS } from './correctable-columns'
import type { Defect } from './inspection'
import type { LotStorage } from './lot'

/** What can be corrected with a reason. Readings cannot: a test is withdrawn and recorded anew. */
export type Corrected = 'lot' | 'lot test' | 'inspection' | 'record'

/** Other values for something recorded. What was recorded is kept; the newest correction rules. */
export interface Correction {
  /** 1 for the first of its subject. */
  readonly number: number
  readonly before: CorrectedValues
  readonly after: CorrectedValues
  readonly reason: string
  readonly byName: string
  /** RFC 3339 */
  readonly at: string
}

/** All values that can be corrected, in the form in which they are stored. */
export type CorrectedValues = Readonly<Record<string, unknown>>

/** One value that a correction changed, in words. */
export interface CorrectedField {
  readonly label: string
  readonly before: string
  readonly after: string
}

type Columns = Readonly<Record<string, Column>>

/** The values of these columns that differ, in the order of the columns. */
export const fieldsCorrected = (
  columns: Columns,
  before: CorrectedValues,
  after: CorrectedValues,
): CorrectedField[] =>
  Object.entries(columns).flatMap(([name, column]) => {
    const [was, is] = [inWords(column, before[name]), inWords(column, after[name])]
    return was === is ? [] : [{ label: column.label, before: was, after: is }]
  })

const BLANK = 'blank'

const inWords = (column: Column, value: unknown): string =>
  value === undefined || value === null || value === '' ? BLANK : kindOf(column).inWords(column, value)

/** A lot's store is stored as one value and read as three. */
export const lotFieldsCorrected = (before: CorrectedValues, after: CorrectedValues): CorrectedField[] =>
  fieldsCorrected(LOT_COLUMNS, storeOpened(before), storeOpened(after))

export const storeOpened = ({ storage, ...rest }: CorrectedValues): CorrectedValues => ({
  ...rest,
  ...(storage as LotStorage | undefined),
})

/** `instrument` is the tag that the register gives the instrument then. */
export const testFieldsCorrected = (
  method: Pick<TestMethod, 'conditions'> | undefined,
  before: CorrectedValues,
  after: CorrectedValues,
): CorrectedField[] => [
  ...fieldsCorrected(LOT_TEST_COLUMNS, before, after),
  ...plainField('Instrument', named(before['instrument']), named(after['instrument'])),
  ...fieldsCorrected(
    method?.conditions ?? {},
    (before['conditions'] ?? {}) as CorrectedValues,
    (after['conditions'] ?? {}) as CorrectedValues,
  ),
]

export const inspectionFieldsCorrected = (
  before: CorrectedValues,
  after: CorrectedValues,
): CorrectedField[] => [
  ...fieldsCorrected(INSPECTION_COLUMNS, before, after),
  ...plainField('Defects', defectsInWords(before['defects']), defectsInWords(after['defects'])),
]

const plainField = (label: string, before: string, after: string): CorrectedField[] =>
  before === after ? [] : [{ label, before, after }]

const named = (tag: unknown): string => (typeof tag === 'string' ? tag : 'none named')

const defectsInWords = (defects: unknown): string =>
  Array.isArray(defects) && defects.length > 0
    ? defects.map((defect: Defect) => defectInWords(defect)).join('; ')
    : 'none'

function defectInWords({ kind, joint, xMm, yMm, note }: Defect): string {
  const place = xMm === undefined && yMm === undefined ? '' : ` (${xMm ?? '–'} mm, ${yMm ?? '–'} mm)`
  return `${kind} at ${joint}${place}${note ? `: ${note}` : ''}`
}

/** "Supplier’s own result: blank → Coverage 98 %; Quantity: 100 pieces → 120 pieces" */
export const correctedInWords = (fields: readonly CorrectedField[]): string =>
  fields.map(({ label, before, after }) => `${label}: ${before} → ${after}`).join('; ')
