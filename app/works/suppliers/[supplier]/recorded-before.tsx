import { lotAddress, lotsAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { LotRecordedBefore } from '@/lib/programme/works/lots-recorded-before'
import { dispositionInWords } from '@/shared/records/lot-identity'

/** Lots of the supplier that programmes recorded before the works kept lots; nothing where there is none. */
export function RecordedBefore({ lots }: { lots: readonly LotRecordedBefore[] }) {
  if (lots.length === 0) return null
  return (
    <Section
      id="recorded-before"
      heading="Recorded in programmes before"
      lead="They stand in the programme that recorded them, where they are tested and disposed of; the series of inspections runs over them too."
    >
      <RuledTable
        caption="Lots recorded in programmes"
        captionHidden
        rows={lots}
        rowKey={({ id }) => id}
        columns={[
          {
            label: 'Lot',
            names: true,
            cell: ({ code, programme }) => <a href={lotAddress(programme, code)}>{code}</a>,
          },
          { label: 'Part', cell: ({ part }) => part },
          {
            label: 'Programme',
            set: 'shrink',
            cell: ({ programme }) => <a href={lotsAddress(programme)}>{programme}</a>,
          },
          { label: 'Received', set: 'shrink', cell: ({ receivedOn }) => <Day at={receivedOn} /> },
          { label: 'Quantity', set: 'number', cell: ({ quantity }) => quantity },
          { label: 'Disposition', cell: dispositionInWords },
        ]}
      />
    </Section>
  )
}
