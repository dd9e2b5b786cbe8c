import { itemAddress } from '@/app/addresses'
import { Digest } from '@/app/ui/digest'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { StatusMark } from '@/app/ui/status-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Stage } from '@/shared/plan/stage'

/** What a signature of this gate covers: every item with the digest of all it rests on. */
export function Covered({ view, stage }: { view: ProgrammeView; stage: Stage }) {
  const items = view.judgement.items.filter(({ item }) => item.definition.stage === stage)
  return (
    <Section
      heading="What a signature covers"
      lead="The digest of an item covers its values, the limits in force, its evidence and the verdict of every finding."
    >
      <RuledTable
        caption="Items the signature covers"
        captionHidden
        rows={items}
        rowKey={({ item }) => item.definition.key}
        columns={[
          {
            label: 'Item',
            names: true,
            cell: ({ item }) => (
              <a href={itemAddress(view.code, item.definition.key)}>{item.definition.title}</a>
            ),
          },
          { label: 'Status', set: 'shrink', cell: ({ status }) => <StatusMark status={status} /> },
          {
            label: 'Approved by',
            cell: ({ approvals }) =>
              approvals
                .filter(({ holds }) => holds)
                .map(({ approval }) => approval?.personName)
                .join(', ') || 'nobody yet',
          },
          { label: 'Digest', set: 'shrink', cell: ({ digest }) => <Digest value={digest} /> },
        ]}
      />
    </Section>
  )
}
