import { Day } from '@/app/ui/date'
import { allResets, resetBefore, type PasswordReset } from '@/lib/auth/password-reset'

interface ResetNoteProps {
  personId: string
  /** When they signed. */
  at: string | Date
}

/** On a stamp: that an administrator had given the person who signed a password; nothing where none did. */
export async function ResetNote({ personId, at }: ResetNoteProps) {
  const reset = resetBefore(await allResets(), personId, at)
  return (
    reset && (
      <p className="stamp-because">
        <ResetSaid reset={reset} by={at} />
      </p>
    )
  )
}

/** What is known of a reset at a moment. */
export function ResetSaid({
  reset: { byName, at, changedAt },
  by,
}: {
  reset: PasswordReset
  by: string | Date
}) {
  const changed = changedAt !== null && new Date(changedAt) <= new Date(by) ? changedAt : undefined
  return (
    <>
      Password reset by {byName}, <Day at={at} />
      {changed ? (
        <>
          ; a new one chosen with it, <Day at={changed} />; the person not confirmed otherwise
        </>
      ) : (
        '; not changed since'
      )}
    </>
  )
}
