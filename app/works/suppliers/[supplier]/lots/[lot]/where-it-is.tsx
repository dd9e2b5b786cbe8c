import { assemblyAddress, lotAddress } from '@/app/addresses'
import { Disclosure } from '@/app/ui/disclosure'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { WorksLotRead } from '@/lib/queries/works/works-lot'
import { groupedBy } from '@/shared/grouped-by'
import { counted } from '@/shared/quantity/counted'
import { isUsable } from '@/shared/records/lot-identity'
import { heldBy, leftInStore } from '@/shared/storage/order-of-use'

const SHOWN = 2_000

/** Every programme and every assembly that the lot is in: what somebody has to know when it turns bad. */
export function WhereItIs({ read }: { read: WorksLotRead }) {
  const { lot, store, uses, judged } = read
  const held = groupedBy(store.allocations, ({ programme }) => programme)
  const used = groupedBy(uses, ({ programme }) => programme)
  const rows = [...new Set([...held.keys(), ...used.keys()])].sort().map((programme) => ({
    programme,
    /** As the programme calls the lot. */
    name: judged
      .find(({ state }) => state.programme.code === programme)
      ?.state.facts.records.lots.find(({ id }) => id === lot.id)?.code,
    pieces: heldBy(held.get(programme) ?? []),
    assemblies: (used.get(programme) ?? []).flatMap(({ assemblies }) => assemblies),
  }))
  const assemblies = rows.reduce((sum, row) => sum + row.assemblies.length, 0)
  return (
    <Section
      id="where"
      heading="Where is it?"
      lead={`${leftInStore(store)} of ${lot.quantity} pieces in store; in ${counted(assemblies, 'assembly', 'assemblies')} of ${counted(rows.length, 'programme', 'programmes')}`}
    >
      {!isUsable(lot) && assemblies > 0 && (
        <Notice kind="refusal" title="Rejected, and soldered into assemblies">
          Each programme below decides what becomes of its assemblies; its findings fail until it has.
        </Notice>
      )}
      {rows.length > 0 && (
        <RuledTable
          caption="Programmes and assemblies"
          captionHidden
          rows={rows}
          rowKey={({ programme }) => programme}
          columns={[
            {
              label: 'Programme',
              set: 'shrink',
              names: true,
              cell: ({ programme, name }) =>
                name === undefined ? programme : <a href={lotAddress(programme, name)}>{programme}</a>,
            },
            { label: 'Holds', set: 'number', cell: ({ pieces }) => pieces },
            {
              label: 'Assemblies',
              cell: (row) => <Assemblies programme={row.programme} serials={row.assemblies} />,
            },
          ]}
        />
      )}
    </Section>
  )
}

function Assemblies({ programme, serials }: { programme: string; serials: readonly string[] }) {
  if (serials.length === 0) return <>none recorded</>
  return (
    <Disclosure summary={counted(serials.length, 'assembly', 'assemblies')}>
      {serials.slice(0, SHOWN).map((serial, position) => (
        <span key={serial}>
          {position > 0 && ', '}
          <a href={assemblyAddress(programme, serial)}>{serial}</a>
        </span>
      ))}
      {serials.length > SHOWN && ` and ${serials.length - SHOWN} more`}
    </Disclosure>
  )
}
