import { findingAddress, itemAddress, recordKindAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

const ASKED = [
  { rule: 'inspection-coverage', what: 'Assemblies and joints inspected' },
  { rule: 'inspection-magnification', what: 'Magnification by land width' },
  { rule: 'inspectors-trained', what: 'Inspectors’ certificates current on the day' },
  { rule: 'inspector-agreement', what: 'Inspectors agree on blind sets' },
]

/** What the plan of inspection asks, and whether it was kept. */
export function PlanKept({ view }: { view: ProgrammeView }) {
  const rows = ASKED.flatMap(({ rule, what }) => {
    const finding = view.judgement.findings.get(rule)
    return finding ? [{ rule, what, finding }] : []
  })
  if (rows.length === 0) return null
  return (
    <Section
      heading="The plan, and how it was kept"
      aside={
        <span className="section-links">
          <a href={itemAddress(view.code, 'visual-inspection')}>The plan</a>
          <a href={recordKindAddress(view.code, 'training')}>Training</a>
        </span>
      }
    >
      <RuledTable
        caption="What the plan of inspection asks"
        captionHidden
        rows={rows}
        rowKey={({ rule }) => rule}
        columns={[
          {
            label: 'Asked',
            names: true,
            cell: ({ rule, what }) => <a href={findingAddress(view.code, rule)}>{what}</a>,
          },
          { label: 'Found', cell: ({ finding }) => finding.found },
          { label: 'Limit', cell: ({ finding }) => finding.limit },
          {
            label: 'Judged',
            set: 'shrink',
            cell: ({ finding }) => <VerdictMark verdict={finding.verdict} />,
          },
        ]}
      />
    </Section>
  )
}
