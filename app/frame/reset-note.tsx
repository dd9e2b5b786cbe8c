import { Day } from '@/app/ui/date'
import { allResets, resetBefore } from '@/lib/auth/password-reset'

interface ResetNoteProps {
  personId: string
  /** When they signed. */
  at: string | Date
}

/** On a stamp: that an administrator had given the person who signed a password; nothing where none did. */
export async function ResetNote({ personId, at }: ResetNoteProps) {
  const reset = resetBefore(await allResets(), personId, at)
  if (!reset) return null
  const changed = reset.changedAt !== null && new Date(reset.changedAt) <= new Date(at)
  return (
    <p className="stamp-because">
      Password reset by {reset.byName}, <Day at={reset.at} />
      {changed ? (
        <>
          ; another chosen with it, <Day at={reset.changedAt ?? at} />; the person not confirmed otherwise
        </>
      ) : (
        '; not changed since'
      )}
    </p>
  )
}
