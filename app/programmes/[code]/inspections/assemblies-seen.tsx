import { benchAddress, inspectionAddress, inspectionsAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Pagination } from '@/app/ui/pagination'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { Button } from '@/app/ui/button'
import { TextField } from '@/app/ui/field'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Inspection } from '@/shared/records/inspection'

const A_PAGE = 50

interface AssembliesSeenProps {
  view: ProgrammeView
  /** Part of a serial number asked for, and which page. */
  find: string
  page: number
}

/** Every look, newest first, found by its serial number. */
export function AssembliesSeen({ view, find, page }: AssembliesSeenProps) {
  const { inspections } = view.state.facts.records
  if (inspections.length === 0)
    return (
      <Empty title="Nothing inspected yet">
        <FirstStep
          first="First inspect an assembly: say how closely, how many joints, and what was at fault."
          refused={refusal('record-inspection', view.actor)}
          href={benchAddress(view.code)}
          does="Inspect the first assembly"
        />
      </Empty>
    )
  const wanted = find.trim().toLowerCase()
  const found = inspections
    .filter(({ assembly }) => assembly.toLowerCase().includes(wanted))
    .sort(newestFirst)
  const pages = Math.max(1, Math.ceil(found.length / A_PAGE))
  const shown = Math.min(Math.max(1, page), pages)
  const addressOf = (number: number) =>
    `${inspectionsAddress(view.code)}?${new URLSearchParams({ ...(find && { find }), page: String(number) })}#looks`
  return (
    <Section id="looks" heading="Assemblies inspected">
      <form className="form-find" action={`${inspectionsAddress(view.code)}#looks`} role="search">
        <TextField name="find" label="Serial number, or part of it" defaultValue={find} />
        <Button type="submit">Find</Button>
      </form>
      {found.length === 0 ? (
        <Empty title={`No assembly’s serial number holds “${find}”`}>
          <a href={`${inspectionsAddress(view.code)}#looks`}>All assemblies inspected</a>
        </Empty>
      ) : (
        <RuledTable
          caption="Inspections"
          captionHidden
          rows={found.slice((shown - 1) * A_PAGE, shown * A_PAGE)}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'Assembly',
              names: true,
              cell: ({ id, assembly }) => <a href={inspectionAddress(view.code, id)}>{assembly}</a>,
            },
            { label: 'On', set: 'shrink', cell: ({ inspectedOn }) => <Day at={inspectedOn} /> },
            { label: 'By', cell: ({ inspector }) => inspector },
            { label: 'Magnified', set: 'number', cell: ({ magnification }) => `${magnification} ×` },
            { label: 'Joints inspected', set: 'number', cell: ({ jointsSeen }) => jointsSeen },
            {
              label: 'Defects',
              cell: ({ defects }) =>
                defects.map(({ kind, joint }) => `${kind} at ${joint}`).join('; ') || 'none',
            },
          ]}
        />
      )}
      <Pagination label="Pages of inspections" page={shown} pages={pages} addressOf={addressOf} />
    </Section>
  )
}

const byName = new Intl.Collator('en', { numeric: true })
const newestFirst = (a: Inspection, b: Inspection): number =>
  a.inspectedOn === b.inspectedOn
    ? byName.compare(b.assembly, a.assembly)
    : a.inspectedOn < b.inspectedOn
      ? 1
      : -1
