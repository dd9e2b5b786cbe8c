import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { POLICY, type PolicyRow } from '@/shared/policy'

const ROWS: readonly PolicyRow[] = Object.values<PolicyRow>(POLICY).filter(
  ({ scope, anyone }) => scope === 'programme' && !anyone,
)

/** The table of rights itself, the same that the server decides by. */
export function RightsTable() {
  return (
    <RuledTable
      caption="Rights in a programme"
      captionHidden
      narrow="scroll"
      rows={ROWS}
      rowKey={({ does }) => does}
      columns={COLUMNS}
    />
  )
}

const COLUMNS: Column<PolicyRow>[] = [
  { label: 'Deed', names: true, cell: ({ does }) => does },
  ...DEPARTMENTS.map((department): Column<PolicyRow> => ({
    label: DEPARTMENT_NAMES[department],
    cell: ({ departments }) => (departments?.includes(department) ? 'may' : '–'),
  })),
  { label: 'Lead', cell: ({ lead }) => (lead ? 'may' : '–') },
  { label: 'Signature', cell: ({ signature }) => (signature ? 'asks for the password' : '–') },
]
