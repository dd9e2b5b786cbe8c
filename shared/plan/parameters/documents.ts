import { choiceColumn, optionalColumn, textColumn, type TextColumn } from '@/shared/columns/column'
import { tableParameter, type ValueOf } from '@/shared/plan/parameter'
import { AUTHORITIES } from '@/shared/plan/requirement'

/** Subjects a document may govern. */
export const GOVERNED = [
  { value: 'everything', label: 'The whole contract' },
  { value: 'board', label: 'Board and laminate' },
  { value: 'layout', label: 'Holes, lands, conductors and spacings' },
  { value: 'finishes', label: 'Board and lead finishes' },
  { value: 'solderability', label: 'Solderability and its tests' },
  { value: 'materials', label: 'Solder, flux and cleaning' },
  { value: 'soldering', label: 'Soldering and workmanship' },
  { value: 'acceptance', label: 'Inspection and acceptance' },
  { value: 'reliability', label: 'Reliability and environment' },
  { value: 'other', label: 'Something else' },
] as const

export const applicableDocuments = tableParameter({
  key: 'applicable-documents',
  label: 'Applicable documents',
  help: 'Every contract, standard and company rule the board is made to, with its edition.',
  owner: 'quality',
  maxRows: 100,
  columns: {
    document: textColumn({ label: 'Document', maxLength: 80, help: 'Its number, as it is cited.' }),
    edition: textColumn({ label: 'Edition', maxLength: 40, help: 'Issue, revision or year.' }),
    authority: choiceColumn({
      label: 'Authority',
      options: AUTHORITIES.map((authority) => ({ value: authority, label: authority })),
    }),
    governs: choiceColumn({ label: 'Governs', options: GOVERNED }),
    note: optionalColumn<TextColumn>(textColumn({ label: 'Note', maxLength: 200 })),
  },
})
export type ApplicableDocument = ValueOf<typeof applicableDocuments>[number]
