import { forbidden, notFound } from 'next/navigation'
import { peopleAddress, personAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { SignsInBy } from '@/app/people/signs-in-by'
import { allowedAtTheWorks } from '@/app/people/works-departments'
import { Entries } from '@/app/programmes/[code]/trail/entries'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import { readPerson } from '@/lib/queries/people'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { AccessForm, ChangeForm, PasswordForm } from './forms'

export const metadata = { title: 'Person – Liquidus' }

const ID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/

interface PersonPageProps {
  params: Promise<{ person: string }>
}

/** One person: what they may, how they sign in, and what was done to their access. */
export default async function PersonPage({ params }: PersonPageProps) {
  const { person: id } = await params
  const visitor = await requirePerson(personAddress(id))
  if (refusal('change-person', { ...visitor, departments: [], leads: false })) forbidden()
  const found = ID.test(id) ? await readPerson(id) : undefined
  if (!found) notFound()
  const { person } = found
  return (
    <DeskSheet
      person={visitor}
      at={peopleAddress()}
      title={person.name}
      supplement={person.email}
      place={[{ text: 'People', href: peopleAddress() }, { text: person.name }]}
      cells={[
        { label: 'Rights', value: person.rights },
        {
          label: 'In the works',
          value: person.worksDepartment ? DEPARTMENT_NAMES[person.worksDepartment] : 'none',
        },
        { label: 'Programmes', value: person.memberships.join('; ') || 'none', wide: true },
        { label: 'Signs in by', value: <SignsInBy person={person} /> },
        { label: 'Since', value: <Day at={person.createdAt} /> },
        {
          label: 'Access',
          value: person.disabledAt ? (
            <>
              ended <Day at={person.disabledAt} />
            </>
          ) : (
            'open'
          ),
        },
      ]}
    >
      {
        <>
          <ChangeForm person={found.person} />
          <AtTheWorks department={person.worksDepartment} />
          {found.person.id !== visitor.personId && (
            <>
              {!found.person.disabledAt && <PasswordForm person={found.person} />}
              <AccessForm person={found.person} />
            </>
          )}
          <Section
            heading="In the installation’s trail"
            lead="What was done to this person’s access, newest first"
          >
            <Entries entries={found.entries} />
          </Section>
        </>
      }
    </DeskSheet>
  )
}

/** What the person's department lets them do to what the works keep. */
function AtTheWorks({ department }: { department: Department | null }) {
  if (department === null)
    return (
      <Section heading="At the works">
        <p>
          They belong to no department of the works: they read what the works keep, and change nothing of it.
        </p>
      </Section>
    )
  return (
    <Section heading="At the works" lead={`What ${DEPARTMENT_NAMES[department].toLowerCase()} may do there.`}>
      <ul>
        {allowedAtTheWorks(department).map((label) => (
          <li key={label}>{label}</li>
        ))}
      </ul>
    </Section>
  )
}
