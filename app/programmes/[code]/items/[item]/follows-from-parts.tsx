import { fromPartsAddress, partAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { partsList } from '@/shared/plan/parameters/parts-list'
import type { ItemState } from '@/shared/gate/item-status'
import { partsNamedIn, type ListedPart } from '@/shared/works/listed-part'
import { partsProposals } from './parts-proposals'
import { ProposedValue } from './proposed-value'

/** On the item that holds the parts list: what follows from it, as revisions to look at; none is saved by itself. */
export function FollowsFromParts({ view, state }: { view: ProgrammeView; state: ItemState }) {
  if (!state.item.definition.parameters.some(({ key }) => key === partsList.key)) return null
  const proposals = partsProposals(view)
  if (!view.state.facts.values.has(partsList.key)) return null
  return (
    <Section
      id="follows"
      heading="What follows from the parts list"
      lead="Each table as the parts have it, beside what stands. Nothing is saved before somebody has looked at it."
    >
      <ListedParts list={listedToday(view)} />
      {proposals.map((proposal) => (
        <ProposedValue
          key={proposal.parameter.key}
          view={view}
          proposal={proposal}
          href={fromPartsAddress(view.code, proposal.item, proposal.parameter.key)}
          source="the parts"
        />
      ))}
    </Section>
  )
}

function listedToday({ state: { facts } }: ProgrammeView): ListedPart[] {
  const named = partsNamedIn(facts.values.get(partsList.key))
  return facts.records.parts.filter(({ code }) => named.includes(code))
}

/** The parts that the list names and the works have described, each leading to its page. */
function ListedParts({ list }: { list: readonly ListedPart[] }) {
  if (list.length === 0) return null
  return (
    <RuledTable
      caption="Parts of the list, as the works describe them"
      rows={list}
      rowKey={({ code }) => code}
      columns={[
        { label: 'Part number', names: true, cell: ({ code }) => <a href={partAddress(code)}>{code}</a> },
        { label: 'Description', cell: ({ values }) => values.description },
        { label: 'Revision', set: 'number', cell: ({ revision }) => revision },
        {
          label: 'Stands',
          cell: ({ approved, withdrawn }) =>
            withdrawn ? 'withdrawn' : approved ? 'approved' : 'not approved',
        },
      ]}
    />
  )
}
