import { DeskTicket } from '@/app/desk-ticket'
import { deskKey } from '@/shared/desk/desk-entry'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import type { DeskLine } from '@/lib/queries/desk'
import type { Bearing } from '@/shared/desk/desk-entry'

const HEADINGS: Readonly<Record<Bearing, { readonly heading: string; readonly id: string }>> = {
  'others wait': { heading: 'Others wait for you', id: 'others-wait' },
  'own work': { heading: 'Your own work', id: 'own-work' },
  'coming due': { heading: 'Coming due', id: 'coming-due' },
  'I wait': { heading: 'You wait for others', id: 'you-wait' },
}

/** So many are shown at once; the rest unfold. */
const SHOWN = 10

interface DeskSectionProps {
  bearing: Bearing
  lines: readonly DeskLine[]
  /** Values that wait for a later stage; said under one's own work. */
  later: number
  today: string
}

/** One part of the desk; nothing where nothing is in it. */
export function DeskSection({ bearing, lines, later, today }: DeskSectionProps) {
  const isOwn = bearing === 'own work'
  if (lines.length === 0 && !(isOwn && later > 0)) return null
  const { heading, id } = HEADINGS[bearing]
  const [shown, rest] = [lines.slice(0, SHOWN), lines.slice(SHOWN)]
  const tickets = (some: readonly DeskLine[]) => (
    <ul className="tickets">
      {some.map((line) => (
        <DeskTicket key={`${line.code} ${deskKey(line)} ${line.message}`} line={line} today={today} />
      ))}
    </ul>
  )
  return (
    <Section id={id} heading={`${heading} (${lines.length})`}>
      {shown.length > 0 && tickets(shown)}
      {rest.length > 0 && <Disclosure summary={`${rest.length} more`}>{tickets(rest)}</Disclosure>}
      {isOwn && later > 0 && (
        <p className="faint">
          {later === 1 ? '1 value of a later stage waits' : `${later} values of later stages wait`} until the
          gate before is open.
        </p>
      )}
    </Section>
  )
}
