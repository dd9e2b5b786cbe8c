import { findingAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'

/** What the rules found on this very lot. */
export function LotFindings({ view, lot }: { view: ProgrammeView; lot: Lot }) {
  const rows = view.state.items.flatMap(({ definition }) =>
    definition.rules.flatMap(({ id, title }) =>
      (view.judgement.findings.get(id)?.parts ?? [])
        .filter(({ subject }) => subject.includes(lot.code))
        .map((part) => ({ id, title, part })),
    ),
  )
  if (rows.length === 0) return null
  return (
    <Section heading="Findings on this lot">
      <RuledTable
        caption="Findings on this lot"
        captionHidden
        rows={rows}
        rowKey={({ id }, position) => `${id} ${position}`}
        columns={[
          {
            label: 'Finding',
            names: true,
            cell: ({ id, title }) => <a href={findingAddress(view.code, id)}>{title}</a>,
          },
          { label: 'Verdict', set: 'shrink', cell: ({ part }) => <VerdictMark verdict={part.verdict} /> },
          { label: 'Found', cell: ({ part }) => part.found },
        ]}
      />
    </Section>
  )
}
