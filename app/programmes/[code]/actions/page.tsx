import { notFound } from 'next/navigation'
import { actionsAddress, itemAddress, routeCardAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { DepartmentTag } from '@/app/ui/department-tag'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { findItem } from '@/shared/catalogue/standard-plan'
import { actionStatus, isClosed } from '@/shared/gate/action-status'
import { actionColumns } from './action-columns'

export const generateMetadata = programmeTitle(({ code }) => `Actions, ${code}`)

/** What the departments have asked each other: the open questions first, oldest due first. */
export default programmePage(async ({ visit, code }) => {
  if (!code) notFound()
  const actions = visit.view.state.actions
  const today = visit.view.state.facts.today
  const open = actions.filter((action) => !isClosed(action))
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={actionsAddress(code)}
      place={[{ text: 'Actions' }]}
      title="Actions"
      supplement="What departments ask of each other; each is an open point until its answer is accepted"
      cells={[
        { label: 'Open', value: open.length },
        { label: 'Overdue', value: open.filter(({ dueOn }) => dueOn < today).length },
        { label: 'Closed', value: actions.length - open.length },
      ]}
    >
      {(view) => (
        <>
          <Section heading="Open">
            {open.length > 0 ? (
              <ActionTable
                view={view}
                caption="Open actions"
                actions={[...open].sort((a, b) => (a.dueOn < b.dueOn ? -1 : 1))}
              />
            ) : (
              <Empty title="No open actions">
                Open an item on <a href={routeCardAddress(view.code)}>the route card</a>: its page has the
                form to ask another department.
              </Empty>
            )}
          </Section>
          {open.length < actions.length && (
            <Section heading="Closed">
              <ActionTable
                view={view}
                caption="Closed actions"
                actions={actions.filter(isClosed).reverse()}
              />
            </Section>
          )}
        </>
      )}
    </ProgrammeSheet>
  )
})

function ActionTable({
  view,
  caption,
  actions,
}: {
  view: ProgrammeView
  caption: string
  actions: readonly ActionEntry[]
}) {
  const { today } = view.state.facts
  const titleOf = (key: string): string =>
    view.state.items.find(({ definition }) => definition.key === key)?.definition.title ??
    findItem(key)?.title ??
    key
  return (
    <RuledTable
      caption={caption}
      take={tableAddress(view.code, 'actions')}
      captionHidden
      rows={actions}
      rowKey={({ number }) => number}
      columns={[
        ...actionColumns(view.code),
        {
          label: 'Item',
          cell: ({ itemKey }) => <a href={itemAddress(view.code, itemKey)}>{titleOf(itemKey)}</a>,
        },
        { label: 'From', set: 'shrink', cell: ({ from }) => <DepartmentTag department={from} /> },
        { label: 'To', set: 'shrink', cell: ({ to }) => <DepartmentTag department={to} /> },
        {
          label: 'Due',
          set: 'shrink',
          cell: (action) => (
            <>
              <Day at={action.dueOn} />
              {!isClosed(action) && action.dueOn < today && <strong> overdue</strong>}
            </>
          ),
        },
        { label: 'Status', set: 'shrink', cell: actionStatus },
      ]}
    />
  )
}
