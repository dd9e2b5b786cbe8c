import { randomUUID } from 'node:crypto'
import { revokeCalendarAddress } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { createCalendarAddress } from './calendar-actions'

/** The calendar's secret address: made once and shown once, or stopped. */
export function Calendar({ since }: { since: Date | null }) {
  return (
    <Section
      id="calendar"
      heading="Calendar"
      lead="A calendar program that subscribes to your secret address shows the due days on your desk (iCalendar, RFC 5545). Whoever knows the address reads them: give it to nobody, and stop it when somebody does."
    >
      {since && (
        <p>
          Your address was made on <Day at={since} />. It was shown then and is kept nowhere.
        </p>
      )}
      {since ? (
        <CommandForm action={revokeCalendarAddress} formKey={randomUUID()} label="Stop the calendar">
          <SubmitButton kind="danger">Stop this address</SubmitButton>
        </CommandForm>
      ) : (
        <CommandForm action={createCalendarAddress} formKey={randomUUID()} label="Make a calendar address">
          <SubmitButton kind="quiet">Make a secret address</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}
