import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { FACES } from '@/shared/commands/all-faces'
import type { AnyFace } from '@/shared/commands/face'

const ROWS = Object.values<AnyFace>(FACES).filter(({ may }) => may.scope === 'programme' && !may.anyone)

/** The table of rights itself, the same that the server decides by. */
export function RightsTable() {
  return (
    <RuledTable
      caption="Rights in a programme"
      captionHidden
      narrow="scroll"
      rows={ROWS}
      rowKey={({ label }) => label}
      columns={COLUMNS}
    />
  )
}

const COLUMNS: Column<AnyFace>[] = [
  { label: 'Deed', names: true, cell: ({ label }) => label },
  ...DEPARTMENTS.map((department): Column<AnyFace> => ({
    label: DEPARTMENT_NAMES[department],
    cell: ({ may }) => (may.departments?.includes(department) ? 'may' : '–'),
  })),
  { label: 'Lead', cell: ({ may }) => (may.lead ? 'may' : '–') },
  { label: 'Signature', cell: ({ may }) => (may.signature ? 'asks for the password' : '–') },
]
