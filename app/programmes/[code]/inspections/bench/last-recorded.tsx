import { inspectionAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

const SHOWN = 5

/** The entries just made, each a link to where it can be read and withdrawn. */
export function LastRecorded({ view }: { view: ProgrammeView }) {
  const { inspections } = view.state.facts.records
  if (inspections.length === 0) return null
  return (
    <Section
      heading="Recorded last"
      lead="An entry made wrongly is withdrawn on its own page and entered again."
    >
      <RuledTable
        caption="Recorded last"
        captionHidden
        rows={inspections.slice(-SHOWN).reverse()}
        rowKey={({ id }) => id}
        columns={[
          {
            label: 'Assembly',
            names: true,
            cell: ({ id, assembly }) => <a href={inspectionAddress(view.code, id)}>{assembly}</a>,
          },
          { label: 'On', set: 'shrink', cell: ({ inspectedOn }) => <Day at={inspectedOn} /> },
          { label: 'By', cell: ({ inspector }) => inspector },
          { label: 'Joints inspected', set: 'number', cell: ({ jointsSeen }) => jointsSeen },
          {
            label: 'Defects',
            cell: ({ defects }) =>
              defects.map(({ kind, joint }) => `${kind} at ${joint}`).join('; ') || 'none',
          },
        ]}
      />
    </Section>
  )
}
