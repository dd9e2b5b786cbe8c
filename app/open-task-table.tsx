import { routeCardAddress } from '@/app/addresses'
import { placeAddress } from '@/app/place-address'
import { Day } from '@/app/ui/date'
import { DepartmentTag } from '@/app/ui/department-tag'
import { RuledTable } from '@/app/ui/ruled-table'
import type { OpenTasksInProgramme } from '@/lib/queries/desk'

/** The things a person owes, each leading to where it is done. */
export function OpenTaskTable({
  openTasks,
  today,
}: {
  openTasks: readonly OpenTasksInProgramme[]
  today: string
}) {
  return (
    <RuledTable
      caption="Open tasks"
      captionHidden
      rows={openTasks}
      rowKey={({ code, verb }, position) => `${code} ${verb} ${position}`}
      columns={[
        {
          label: 'What',
          names: true,
          cell: ({ code, place, message }) => <a href={placeAddress(code, place)}>{message}</a>,
        },
        { label: 'To do', set: 'shrink', cell: ({ verb }) => VERBS[verb] },
        {
          label: 'Programme',
          set: 'shrink',
          cell: ({ code, programme }) => (
            <a href={routeCardAddress(code)} title={programme}>
              {code}
            </a>
          ),
        },
        { label: 'For', set: 'shrink', cell: ({ department }) => <DepartmentTag department={department} /> },
        {
          label: 'Due',
          set: 'shrink',
          cell: ({ dueOn }) =>
            dueOn ? <Due on={dueOn} today={today} /> : <span className="faint">no date</span>,
        },
      ]}
    />
  )
}

const VERBS: Record<OpenTasksInProgramme['verb'], string> = {
  answer: 'Answer a question',
  accept: 'Accept or return an answer',
  'find the cause': 'Answer chart signal',
  approve: 'Approve',
  'approve again': 'Approve again: it changed',
  sign: 'Sign gate',
  decide: 'Decide',
}

function Due({ on, today }: { on: string; today: string }) {
  return (
    <>
      <Day at={on} />
      {on < today && <strong> overdue</strong>}
    </>
  )
}
