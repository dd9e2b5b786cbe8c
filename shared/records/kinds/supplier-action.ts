import { dateColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** What a supplier did about rejected lots, accepted by quality: it lets a discontinued series resume. */
export const supplierAction = recordKind({
  key: 'supplier-action',
  label: 'supplier action',
  plural: 'supplier actions',
  help: 'What a supplier changed after lots were rejected, once quality has accepted it. Inspection that was discontinued resumes, tightened, from that date.',
  stage: 'evaluation',
  departments: ['quality'],
  assemblies: null,
  teaches: true,
  columns: {
    supplier: textColumn({ label: 'Supplier', maxLength: 80 }),
    part: textColumn({ label: 'Part', maxLength: 80 }),
    acceptedOn: dateColumn({ label: 'Accepted on' }),
    action: textColumn({ label: 'What was changed', maxLength: 300 }),
  },
  cautions: [],
  keptAt: 'supplier',
})
