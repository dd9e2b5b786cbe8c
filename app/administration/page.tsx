import { forbidden } from 'next/navigation'
import { administrationAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { TourOffer } from '@/app/tour/tour-offer'
import { Digest } from '@/app/ui/digest'
import { readInstallation } from '@/lib/queries/administration'
import { readOneTimePasswords } from '@/lib/queries/people'
import { readTrail, trailSearchFrom } from '@/lib/queries/trail'
import { settings } from '@/lib/settings/settings'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { InstallationTrail } from './installation-trail'
import { Keeping } from './keeping'
import { LastVerification } from './last-verification'
import { OneTimePasswords } from './one-time-passwords'
import { SettingsInForce } from './settings-in-force'

export const metadata = { title: 'Administration – Liquidus' }

interface AdministrationPageProps {
  searchParams: Promise<Record<string, string | string[] | undefined>>
}

/** The installation: what it keeps and where, how it is set, and what was done to people and instruments. */
export default async function AdministrationPage({ searchParams }: AdministrationPageProps) {
  const person = await requirePerson(administrationAddress())
  if (!person.administrator && !person.auditor) forbidden()
  const given = await searchParams
  const search = trailSearchFrom(given)
  const [facts, oneTime, page, verdict] = await Promise.all([
    readInstallation(),
    readOneTimePasswords(),
    readTrail(INSTALLATION_TRAIL, search),
    given['verify'] === undefined ? undefined : verdictOnStored(INSTALLATION_TRAIL),
  ])
  return (
    <DeskSheet
      person={person}
      at={administrationAddress()}
      title="Administration"
      supplement="What is kept, how it is set, and what was done to people and instruments"
      cells={[
        { label: 'Programmes', value: facts.programmes },
        { label: 'People who can sign in', value: facts.people },
        { label: 'Entries in the installation’s trail', value: facts.trail.seq },
        { label: 'Newest hash', value: <Digest value={facts.trail.hash} length={24} />, wide: true },
      ]}
    >
      <Keeping facts={facts} settings={settings()} />
      <LastVerification facts={facts.verification} />
      <OneTimePasswords {...oneTime} />
      <SettingsInForce settings={settings()} />
      <InstallationTrail search={search} page={page} verdict={verdict} />
      <TourOffer />
    </DeskSheet>
  )
}
