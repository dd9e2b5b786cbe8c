import { redirect } from 'next/navigation'
import { deskAddress, deskSettingsAddress, programmesAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { KeyList } from '@/app/keys/key-list'
import { SINGLE_KEYS } from '@/app/keys/keys'
import { SingleKeysSwitch } from '@/app/keys/single-keys-switch'
import { Section } from '@/app/ui/section'
import { readDeskSettings } from '@/lib/queries/desk-settings'
import { settings } from '@/lib/settings/settings'
import { Away } from './away'
import { Calendar } from './calendar'
import { DailyMail } from './daily-mail'
import { dateAtWorks } from '@/lib/settings/works'

export const metadata = { title: 'Away, daily mail, calendar – Liquidus' }

/** Who stands in while one is away, whether a mail tells what is new, and the calendar of due days. */
export default async function DeskSettingsPage() {
  const person = await requirePerson(deskSettingsAddress())
  if (person.auditor || person.administrator) redirect(programmesAddress())
  const today = dateAtWorks(new Date())
  const chosen = await readDeskSettings(person.personId, today)
  return (
    <DeskSheet
      person={person}
      at={deskSettingsAddress()}
      title="Away, daily mail, calendar"
      supplement={person.name}
      place={[{ text: 'Desk', href: deskAddress() }, { text: 'Away, daily mail, calendar' }]}
    >
      <Away personId={person.personId} chosen={chosen} today={today} />
      <DailyMail wanted={chosen.wantsDigest} mail={settings().mail} address={person.email} />
      <Calendar since={chosen.calendarSince} />
      <Section id="keys" heading="Keys" lead="A key pressed alone does something outside of fields only.">
        <KeyList keys={SINGLE_KEYS} />
        <SingleKeysSwitch />
      </Section>
    </DeskSheet>
  )
}
