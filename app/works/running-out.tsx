import { instrumentsAddress, storeAddress, worksPeopleAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import type { Ending } from '@/lib/queries/works/running-out'
import { NOTICE_DAYS } from '@/shared/training/competence'
import { skillName } from '@/shared/training/training-matrix'

interface RunningOutProps {
  endings: readonly Ending[]
  today: string
}

/** What of the works runs out of time, the nearest first. */
export function RunningOut({ endings, today }: RunningOutProps) {
  if (endings.length === 0) return null
  return (
    <Section heading="Running out" lead={`Calibrations in 30 days, training and lots in ${NOTICE_DAYS}.`}>
      <ul>
        {endings.map((ending) => {
          const { what, href } = inWords(ending)
          return (
            <li key={`${what} ${ending.on}`}>
              {ending.on < today ? 'since' : 'on'} <Day at={ending.on} />: <a href={href}>{what}</a>
            </li>
          )
        })}
      </ul>
    </Section>
  )
}

function inWords(ending: Ending): { what: string; href: string } {
  switch (ending.kind) {
    case 'calibration':
      return { what: `calibration of ${ending.tag}`, href: instrumentsAddress() }
    case 'training':
      return { what: `${ending.name}, ${skillName(ending.skill).toLowerCase()}`, href: worksPeopleAddress() }
    case 'lot':
      return { what: `lot ${ending.code} of ${ending.part}`, href: storeAddress() }
  }
}
