import { endOwnSession } from '@/app/password/actions'
import { Moment, momentInWords } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { browserName } from '@/lib/auth/browser-name'
import type { SessionRow } from '@/lib/auth/session-store'

interface OwnSessionsProps {
  sessions: readonly SessionRow[]
  /** The one that this page is looked at in. */
  current: string
  idleMinutes: number
}

/** Where the person is signed in, each session with its end. */
export function OwnSessions({ sessions, current, idleMinutes }: OwnSessionsProps) {
  return (
    <Section
      heading="Where you are signed in"
      lead={`End what you do not know, then change your password. A session ends by itself after ${idleMinutes} minutes without use, and after twelve hours.`}
    >
      <RuledTable
        caption="Your sessions"
        captionHidden
        rows={sessions}
        rowKey={({ id }) => id}
        columns={[
          {
            label: 'Browser',
            names: true,
            cell: ({ id, browser }) => `${browserName(browser)}${id === current ? ', this one' : ''}`,
          },
          { label: 'From', cell: ({ address }) => address },
          { label: 'Signed in', cell: ({ startedAt }) => <Moment at={startedAt} /> },
          { label: 'Last used', cell: ({ lastSeenAt }) => <Moment at={lastSeenAt} /> },
          {
            label: 'End',
            set: 'shrink',
            cell: (session) => <EndForm session={session} current={session.id === current} />,
          },
        ]}
      />
    </Section>
  )
}

/** The form has no name of its own: two browsers alike would make two landmarks alike. */
function EndForm({ session, current }: { session: SessionRow; current: boolean }) {
  const action = current ? 'Sign out' : 'End it'
  return (
    <form action={endOwnSession}>
      <input type="hidden" name="sessionId" value={session.id} />
      <SubmitButton
        kind="quiet"
        label={`${action}: ${browserName(session.browser)}, signed in ${momentInWords(session.startedAt)}`}
      >
        {action}
      </SubmitButton>
    </form>
  )
}
