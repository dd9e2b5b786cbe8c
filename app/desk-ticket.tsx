import { routeCardAddress } from '@/app/addresses'
import { placeAddress } from '@/app/place-address'
import { ButtonLink } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { DepartmentTag } from '@/app/ui/department-tag'
import { MarginBar } from '@/app/ui/margin-bar'
import type { DeskLine } from '@/lib/queries/desk'
import { AWAITED, TO_DO } from '@/shared/desk/desk-words'

/** So many of what stands behind a ticket are named. */
const MOST_NAMED = 4

/** One thing on a desk as a job ticket: whose programme, what it is about, how far it is off, and the way to do it. */
export function DeskTicket({ line, today }: { line: DeskLine; today: string }) {
  const { code, programme, department, place, verb, message, several = [], margin, bearing } = line
  const waits = bearing === 'I wait'
  return (
    <li className="ticket">
      <p className="ticket-head">
        <a href={routeCardAddress(code)} title={programme}>
          {code}
        </a>
        <DepartmentTag department={department} />
        <Due on={line.dueOn} today={today} />
      </p>
      <p className="ticket-what">
        {message}
        {several.length > 0 && (
          <span className="faint">
            {' '}
            {several.slice(0, MOST_NAMED).join(', ')}
            {several.length > MOST_NAMED && ` and ${several.length - MOST_NAMED} more`}
          </span>
        )}
      </p>
      {margin && <MarginBar margin={margin} />}
      <p className="ticket-do">
        <ButtonLink href={placeAddress(code, place)}>
          {waits ? `${line.waitsFor}: ${AWAITED[verb]}` : TO_DO[verb]}
          <span className="sr-only"> {message}</span>
        </ButtonLink>
      </p>
    </li>
  )
}

function Due({ on, today }: { on: string | null; today: string }) {
  if (on === null) return null
  return (
    <span className="ticket-due">
      {on < today ? <strong>overdue since </strong> : 'due '}
      <Day at={on} />
    </span>
  )
}
