import { SignsInBy } from '@/app/people/signs-in-by'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { PersonRow } from '@/lib/queries/people'

/** One-time passwords that nobody has changed yet: each is a way in that more than one person knows. */
export function OneTimePasswords({ people, found }: { people: readonly PersonRow[]; found: number }) {
  return (
    <Section
      heading="One-time passwords not changed yet"
      lead="An expired one lets nobody in. The administrator gives a new one under People."
    >
      {people.length > 0 ? (
        <RuledTable
          caption="People with a one-time password"
          captionHidden
          rows={people}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Name', names: true, cell: ({ name }) => name },
            { label: 'Address', cell: ({ email }) => email },
            { label: 'Signs in by', cell: (person) => <SignsInBy person={person} /> },
          ]}
        />
      ) : (
        <Empty title="None">Everybody who has a password here chose it themselves.</Empty>
      )}
      {found > people.length && <p>And {found - people.length} more; see People.</p>}
    </Section>
  )
}
