import { Moment } from '@/app/ui/date'
import type { PersonRow } from '@/lib/queries/people'

/** How a person signs in; of a one-time password, until when it is good. */
export function SignsInBy({ person: { signsInBy, oneTimePassword } }: { person: PersonRow }) {
  if (!oneTimePassword) return signsInBy
  const { until, isOver } = oneTimePassword
  if (isOver) return <strong>one-time password, expired</strong>
  return <>one-time password, good until {until && <Moment at={until} />}</>
}
