import { FindLink } from '@/app/find/find-link'
import { signOut } from '@/app/sign-in/actions'
import { passwordAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import type { SignedIn } from '@/lib/auth/session'

interface PersonCornerProps {
  person: SignedIn
  /** The programme one is in: what is found there comes first. */
  programme?: string
}

/** The way to anything, who is signed in, and the way out, at the right of every header. */
export function PersonCorner({ person, programme }: PersonCornerProps) {
  const role = person.auditor ? 'auditor' : person.administrator ? 'administrator' : undefined
  return (
    <form action={signOut} className="person-corner">
      <FindLink programme={programme} />
      <a href={passwordAddress()}>
        {person.name}
        {role && `, ${role}`}
      </a>
      <Button type="submit" kind="plain">
        Sign out
      </Button>
    </form>
  )
}
