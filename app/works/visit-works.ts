import { forbidden } from 'next/navigation'
import { requirePerson } from '@/app/frame/visit'
import type { SignedIn } from '@/lib/auth/session'
import { worksActor } from '@/lib/auth/works-actor'
import type { Actor } from '@/shared/actor'

/** Who looks at the works: everybody but an administrator, who takes no part in what they decide. */
export async function visitWorks(then: string): Promise<{ person: SignedIn; actor: Actor }> {
  const person = await requirePerson(then)
  if (person.administrator) forbidden()
  return { person, actor: worksActor(person) }
}
