import { randomUUID } from 'node:crypto'
import { endDelegation, nameDelegate } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { DeskSettings } from '@/lib/queries/desk-settings'

/** Who stands in for the person, for whom they stand in, and the form to name somebody. */
export function Away({
  personId,
  chosen: { delegations, colleagues },
  today,
}: {
  personId: string
  chosen: DeskSettings
  today: string
}) {
  return (
    <Section
      id="away"
      heading="While you are away"
      lead="Somebody of your department stands in from the first day to the last. In your programmes they may do what your department may, and sign as themselves “for” you; what you could not sign because of what you did yourself, they cannot either. Leading a programme does not pass on: hand the lead over for that."
    >
      {delegations.length > 0 && (
        <RuledTable
          caption="Standing in"
          captionHidden
          rows={delegations}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'Who',
              names: true,
              cell: (row) =>
                row.personId === personId
                  ? `${row.delegate} stands in for you`
                  : `You stand in for ${row.person}`,
            },
            { label: 'From', set: 'shrink', cell: ({ fromOn }) => <Day at={fromOn} /> },
            { label: 'To', set: 'shrink', cell: ({ toOn }) => <Day at={toOn} /> },
            { label: 'Change', set: 'shrink', cell: ({ id }) => <EndForm id={id} /> },
          ]}
        />
      )}
      {colleagues.length > 0 ? (
        <CommandForm
          action={nameDelegate}
          formKey={randomUUID()}
          label="Name who stands in"
          className="form-narrow"
        >
          <ChoiceBox
            name="delegate"
            label="Stands in for you"
            choices={colleagues.map(({ id, name }) => ({ value: id, text: name }))}
            required
          />
          <TextBox name="fromOn" type="date" label="First day" defaultValue={today} required />
          <TextBox name="toOn" type="date" label="Last day" required />
          <SubmitButton>Name who stands in</SubmitButton>
        </CommandForm>
      ) : (
        <p>Nobody else belongs to a department of yours, in any programme.</p>
      )}
    </Section>
  )
}

const EndForm = ({ id }: { id: string }) => (
  <CommandForm action={endDelegation} formKey={randomUUID()} hidden={{ delegation: id }} label="End it">
    <SubmitButton kind="danger">End it</SubmitButton>
  </CommandForm>
)
