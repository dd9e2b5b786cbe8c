import { database } from '@/lib/db/client'
import { judgedProgramme, type JudgedProgramme } from '@/lib/programme/judged'
import { standingIn, standInsOf } from '@/lib/programme/stand-ins'
import { textFromAddress } from '@/lib/queries/from-address'
import type { SignedIn } from '@/lib/auth/session'
import { dateAtWorks } from '@/lib/settings/works'
import type { Actor } from '@/shared/actor'
import { readRefusal } from '@/shared/policy'

/** A programme as one person may see it: what stands, and what they may do there. */
export interface ProgrammeView extends JudgedProgramme {
  readonly actor: Actor
  readonly code: string
}

export type ProgrammeRead =
  | { readonly found: false }
  | { readonly found: true; readonly refused: string; readonly view?: undefined }
  | { readonly found: true; readonly refused?: undefined; readonly view: ProgrammeView }

/** Reads a programme for a person; says so when there is none, or when it is not theirs to read. */
export async function readProgramme(
  code: string,
  person: SignedIn,
  now = new Date(),
): Promise<ProgrammeRead> {
  const judged = await judgedProgramme(textFromAddress(code).toUpperCase())
  if (!judged) return { found: false }
  const actor = await actorOn(judged, person, now)
  const refused = readRefusal(actor)
  if (refused) return { found: true, refused }
  return { found: true, view: { ...judged, actor, code: judged.state.programme.code } }
}

/** The person's part in a programme; where they have none of their own, the part of whom they stand in for that day. */
async function actorOn(judged: JudgedProgramme, person: SignedIn, now: Date): Promise<Actor> {
  const own = actorFrom(judged, person)
  if (readRefusal(own) === undefined || person.administrator) return own
  const standIns = await standInsOf(database(), person.personId, dateAtWorks(now))
  return standingIn(own, standIns.get(judged.state.programme.id))
}

/** The person's own part in a programme, from the facts as judged. */
export const actorFrom = (
  { state }: JudgedProgramme,
  {
    personId,
    name,
    auditor,
    administrator,
  }: Pick<SignedIn, 'personId' | 'name' | 'auditor' | 'administrator'>,
): Actor => ({
  personId,
  name,
  auditor,
  administrator,
  leads: state.programme.leadId === personId,
  departments: state.members
    .filter((member) => member.personId === personId)
    .map(({ department }) => department),
})
