import { randomUUID } from 'node:crypto'
import { chooseDigest } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { MailSettings } from '@/lib/settings/settings'

interface DailyMailProps {
  wanted: boolean
  /** Undefined where the installation sends no mail. */
  mail: MailSettings | undefined
  address: string
}

/** Whether the person wants the mail; where none is sent, that it is not. */
export function DailyMail({ wanted, mail, address }: DailyMailProps) {
  const hour = mail && `${String(mail.digestHour).padStart(2, '0')}:00 (${mail.timeZone})`
  return (
    <Section
      id="daily-mail"
      heading="Daily mail"
      lead={
        mail
          ? `Once a day, from ${hour} on, a mail to ${address} tells what came onto your desk since the one before; on a day without news there is none. Whoever reads your mail reads the titles too.`
          : 'This installation sends no mail. Its administrator can set a mail server.'
      }
    >
      <p>{wanted ? 'You want the mail.' : 'You get no mail.'}</p>
      {(mail || wanted) && (
        <CommandForm
          action={chooseDigest}
          formKey={randomUUID()}
          hidden={wanted ? {} : { wanted: 'on' }}
          label="Choose the daily mail"
        >
          <SubmitButton kind="quiet">{wanted ? 'Stop the mail' : 'Send me the mail'}</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}
