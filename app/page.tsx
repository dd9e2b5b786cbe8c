import { redirect } from 'next/navigation'
import {
  deskAddress,
  deskSettingsAddress,
  instrumentsAddress,
  newProgrammeAddress,
  programmesAddress,
} from '@/app/addresses'
import { DeskSection } from '@/app/desk-section'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { TourOffer } from '@/app/tour/tour-offer'
import { ButtonLink } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { trailsOfDesk } from '@/lib/live/watched-trails'
import { deskOf, type Desk } from '@/lib/queries/desk'
import { dateAtWorks } from '@/lib/settings/works'
import type { Bearing } from '@/shared/desk/desk-entry'

export const metadata = { title: 'Desk – Liquidus' }

/** What others wait for stands first, what one waits for last. */
const COLUMNS: readonly (readonly Bearing[])[] = [['others wait'], ['own work', 'coming due'], ['I wait']]

/** What this person can do now, over all programmes, by how it bears on others. */
export default async function DeskPage() {
  const person = await requirePerson(deskAddress())
  if (person.auditor) redirect(programmesAddress())
  if (person.administrator) redirect(instrumentsAddress())
  const { mark } = await trailsOfDesk(person.personId)
  const desk = await deskOf(person)
  const today = dateAtWorks(new Date())
  const of = (bearing: Bearing) => desk.lines.filter((line) => line.bearing === bearing)
  const holdsAny = (bearings: readonly Bearing[]) =>
    bearings.some((bearing) => of(bearing).length > 0 || (bearing === 'own work' && desk.later > 0))
  const late = desk.lines.filter(
    ({ dueOn, bearing }) => bearing !== 'I wait' && dueOn !== null && dueOn < today,
  )
  return (
    <DeskSheet
      person={person}
      at={deskAddress()}
      newsSince={mark}
      title="My work"
      supplement="What is possible now, over all programmes; oldest due first"
      cells={[
        { label: 'Others wait for me', value: of('others wait').length },
        { label: 'Own work', value: of('own work').length },
        { label: 'Overdue', value: late.length },
        { label: 'Programmes', value: desk.programmes },
      ]}
    >
      <StandsIn desk={desk} />
      {desk.lines.length === 0 && <NothingWaits programmes={desk.programmes} />}
      <div className="desk-columns">
        {COLUMNS.filter(holdsAny).map((bearings) => (
          <div key={bearings[0]} className="desk-column">
            {bearings.map((bearing) => (
              <DeskSection
                key={bearing}
                bearing={bearing}
                lines={of(bearing)}
                later={desk.later}
                today={today}
              />
            ))}
          </div>
        ))}
      </div>
      <p className="form-actions">
        <ButtonLink href={newProgrammeAddress()}>Open a programme</ButtonLink>{' '}
        <a href={deskSettingsAddress()}>Away, daily mail, calendar</a>
      </p>
      <TourOffer />
    </DeskSheet>
  )
}

function StandsIn({ desk: { standsInFor } }: { desk: Desk }) {
  if (standsInFor.length === 0) return null
  return (
    <Notice kind="info" title="You stand in">
      {standsInFor.map(({ personId, name, until }) => (
        <span key={personId}>
          For {name} until <Day at={until} />: their programmes are on your desk. What you sign there says
          “for {name}”.{' '}
        </span>
      ))}
    </Notice>
  )
}

function NothingWaits({ programmes }: { programmes: number }) {
  return (
    <Empty title="Nothing waits for you">
      {programmes === 0
        ? 'You belong to no programme yet. Open one, or ask a programme’s lead to invite you.'
        : 'Values, findings, actions, approvals and gates that wait for your department appear here.'}
    </Empty>
  )
}
