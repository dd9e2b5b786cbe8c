import { forbidden } from 'next/navigation'
import { peopleAddress, personAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { AddPersonForm } from '@/app/people/add-form'
import { SignsInBy } from '@/app/people/signs-in-by'
import { Button } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { TextField } from '@/app/ui/field'
import { Pagination } from '@/app/ui/pagination'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { pageFromAddress, textFromAddress } from '@/lib/queries/from-address'
import { PEOPLE_A_PAGE, readPeople, type PersonRow } from '@/lib/queries/people'
import { settings } from '@/lib/settings/settings'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'

export const metadata = { title: 'People – Liquidus' }

interface PeoplePageProps {
  searchParams: Promise<{ text?: string; page?: string }>
}

/** Everybody who can sign in, or could; kept by the administrator. */
export default async function PeoplePage({ searchParams }: PeoplePageProps) {
  const person = await requirePerson(peopleAddress())
  const given = await searchParams
  const text = textFromAddress(given.text)
  const page = pageFromAddress(given.page)
  if (refusal('add-person', { ...person, departments: [], leads: false })) forbidden()
  const { people, found } = await readPeople(text, page)
  return (
    <DeskSheet
      person={person}
      at={peopleAddress()}
      title="People"
      supplement="Who can sign in here, and with what rights; a programme’s lead invites its members"
      cells={[{ label: 'Found', value: found }]}
    >
      <form method="get" role="search" className="form-row" aria-label="Find a person">
        <TextField name="text" type="search" label="Name or address" defaultValue={text} />
        <Button type="submit">Find</Button>
      </form>
      {people.length > 0 ? (
        <RuledTable caption="People" captionHidden rows={people} rowKey={({ id }) => id} columns={COLUMNS} />
      ) : (
        <Empty title="Nobody found">Look for another name or address.</Empty>
      )}
      <Pagination
        label="Pages of people"
        page={page}
        pages={Math.ceil(found / PEOPLE_A_PAGE)}
        addressOf={(to) => `${peopleAddress()}?${new URLSearchParams({ text, page: String(to) })}`}
      />
      <AddPersonForm identityProvider={settings().identityProvider?.name} />
    </DeskSheet>
  )
}

const COLUMNS: Column<PersonRow>[] = [
  { label: 'Name', names: true, cell: ({ id, name }) => <a href={personAddress(id)}>{name}</a> },
  { label: 'Address', cell: ({ email }) => email },
  { label: 'Rights', set: 'shrink', cell: ({ rights }) => rights },
  {
    label: 'In the works',
    set: 'shrink',
    cell: ({ worksDepartment }) => (worksDepartment ? DEPARTMENT_NAMES[worksDepartment] : 'none'),
  },
  { label: 'Programmes', cell: ({ memberships }) => memberships.join('; ') || 'none' },
  { label: 'Signs in by', cell: (person) => <SignsInBy person={person} /> },
  {
    label: 'Access',
    set: 'shrink',
    cell: ({ disabledAt }) =>
      disabledAt ? (
        <strong>
          ended <Day at={disabledAt} />
        </strong>
      ) : (
        'open'
      ),
  },
]
