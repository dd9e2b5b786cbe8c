import type { SignedIn } from '@/lib/auth/session'
import { consider } from '@/lib/commands/considered/consider'
import { whatItChanges, type Previewed } from '@/lib/commands/considered/what-it-changes'
import { programmesOf, programmesRestingOn } from '@/lib/queries/works/programmes-resting-on'
import { effectInEach, type WorksEffect } from '@/shared/gate/works-effect'

/** Programmes take company rules over; everything else at the works counts at once. */
const TAKEN_OVER: ReadonlySet<Previewed> = new Set(['state-company-rule', 'withdraw-company-rule'])

/**
 * What a command of the works would turn, in which programme; nothing is stored. As many statements for three
 * programmes as for two hundred. Throws `Refused` where the command itself would be refused.
 */
export async function worksEffect(
  person: Pick<SignedIn, 'personId' | 'auditor'>,
  name: Previewed,
  input: unknown,
  at = new Date(),
): Promise<WorksEffect> {
  const considered = await consider(person.personId, name, input, at)
  const change = await whatItChanges(name, considered)
  const onceTaken = TAKEN_OVER.has(name)
  const { judged, more } = onceTaken
    ? await programmesOf(person)
    : await programmesRestingOn(considered.trailId)
  return { looked: judged.length, more, programmes: effectInEach(judged, change), onceTaken }
}
