import { redirect } from 'next/navigation'
import { deskAddress, instrumentsAddress, newProgrammeAddress, programmesAddress } from '@/app/addresses'
import { CommentsForMe } from '@/app/deliberation/comments-for-me'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { OpenTaskTable } from '@/app/open-task-table'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { deskOf } from '@/lib/queries/desk'
import { dateOf } from '@/shared/quantity/calendar'

export const metadata = { title: 'Desk – Liquidus' }

/** What this person owes, over all programmes, oldest due first. */
export default async function DeskPage() {
  const person = await requirePerson(deskAddress())
  if (person.auditor) redirect(programmesAddress())
  if (person.administrator) redirect(instrumentsAddress())
  const { openTasks, programmes } = await deskOf(person)
  const today = dateOf(new Date())
  const late = openTasks.filter(({ dueOn }) => dueOn !== null && dueOn < today).length
  return (
    <DeskSheet
      person={person}
      at={deskAddress()}
      title={'My work'}
      supplement="Oldest due first, over all programmes"
      cells={[
        { label: 'Waiting', value: openTasks.length },
        { label: 'Overdue', value: late },
        { label: 'Programmes', value: programmes },
      ]}
    >
      {openTasks.length > 0 ? (
        <OpenTaskTable openTasks={openTasks} today={today} />
      ) : (
        <Empty title="Nothing waits for you">
          {programmes === 0
            ? 'You belong to no programme yet. Open one, or ask a programme’s lead to invite you.'
            : 'Questions, approvals and gates that wait for your department appear here.'}
        </Empty>
      )}
      <CommentsForMe personId={person.personId} />
      <p className="form-actions">
        <ButtonLink href={newProgrammeAddress()}>Open a programme</ButtonLink>
      </p>
    </DeskSheet>
  )
}
