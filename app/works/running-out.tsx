import { instrumentsAddress, storeAddress, worksPeopleAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import { inForce, readTraining, readValidMax } from '@/lib/queries/people-of-the-works'
import { readInstruments } from '@/lib/queries/instruments'
import { readStore } from '@/lib/queries/works/store'
import { dateAtWorks } from '@/lib/settings/works'
import { dueStatus } from '@/shared/instruments/due-status'
import { addDays } from '@/shared/quantity/calendar'
import { NOTICE_DAYS } from '@/shared/training/competence'
import { runningOut, skillName, trainingMatrix } from '@/shared/training/training-matrix'

interface Ending {
  readonly on: string
  readonly what: string
  readonly href: string
}

/** What of the works runs out of time: calibrations, training, lots in the store; the nearest first. */
export async function RunningOut() {
  const today = dateAtWorks(new Date())
  const [instruments, training, validMax, store] = await Promise.all([
    readInstruments(),
    readTraining(),
    readValidMax(),
    readStore(),
  ])
  const endings: Ending[] = [
    ...instruments
      .filter((instrument) => ['overdue', 'due soon'].includes(dueStatus(instrument, today)))
      .map(({ tag, dueOn }) => ({
        on: dueOn,
        what: `calibration of ${tag}`,
        href: instrumentsAddress(),
      })),
    ...runningOut(trainingMatrix(inForce(training), today, validMax.value)).map(({ name, skill, until }) => ({
      on: until,
      what: `${name}, ${skillName(skill).toLowerCase()}`,
      href: worksPeopleAddress(),
    })),
    ...store
      .filter(({ expiresOn }) => expiresOn !== null && expiresOn <= addDays(today, NOTICE_DAYS))
      .map(({ code, part, expiresOn }) => ({
        on: expiresOn ?? '',
        what: `lot ${code} of ${part}`,
        href: storeAddress(),
      })),
  ]
  if (endings.length === 0) return null
  return (
    <Section heading="Running out" lead={`Calibrations in 30 days, training and lots in ${NOTICE_DAYS}.`}>
      <ul>
        {endings
          .sort((one, other) => (one.on < other.on ? -1 : 1))
          .map(({ on, what, href }) => (
            <li key={`${what} ${on}`}>
              {on < today ? 'since' : 'on'} <Day at={on} />: <a href={href}>{what}</a>
            </li>
          ))}
      </ul>
    </Section>
  )
}
