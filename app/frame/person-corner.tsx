import { signOut } from '@/app/sign-in/actions'
import { passwordAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import type { SignedIn } from '@/lib/auth/session'

/** Who is signed in, at the right of every header, and the way out. */
export function PersonCorner({ person }: { person: SignedIn }) {
  const role = person.auditor ? 'auditor' : person.administrator ? 'administrator' : undefined
  return (
    <form action={signOut} className="person-corner">
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
