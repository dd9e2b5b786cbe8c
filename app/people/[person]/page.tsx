import { notFound } from 'next/navigation'
import { peopleAddress, personAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { SignsInBy } from '@/app/people/signs-in-by'
import { Entries } from '@/app/programmes/[code]/trail/entries'
import { Day } from '@/app/ui/date'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { readPerson } from '@/lib/queries/people'
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
  const refused = refusal('change-person', { ...visitor, departments: [], leads: false })
  const found = !refused && ID.test(id) ? await readPerson(id) : undefined
  if (!refused && !found) notFound()
  const person = found?.person
  return (
    <DeskSheet
      person={visitor}
      at={peopleAddress()}
      title={person?.name ?? 'People'}
      supplement={person?.email}
      place={[{ text: 'People', href: peopleAddress() }, { text: person?.name ?? 'Person' }]}
      cells={
        person
          ? [
              { label: 'Rights', value: person.rights },
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
            ]
          : []
      }
    >
      {refused && <Notice kind="refusal">{refused}</Notice>}
      {found && (
        <>
          <ChangeForm person={found.person} />
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
      )}
    </DeskSheet>
  )
}
