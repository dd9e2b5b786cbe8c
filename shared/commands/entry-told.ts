import { ownMember } from '@/shared/own-member'
import { faceOf, isCommandName } from '@/shared/commands/all-faces'
import { BESIDE_THE_DOOR } from '@/shared/commands/beside-the-door'
import type { AnyEntryFace, TellMoment, Told } from '@/shared/commands/face'
import { minuteOf } from '@/shared/quantity/minute-of'
import type { Place } from '@/shared/place'
import type { TrailEntry } from '@/shared/trail/entry'

type Entry = Pick<TrailEntry, 'command' | 'payload'>

/** What an entry's command does; a command this version does not know goes by its name. */
export const entryLabel = (command: string): string => faceBehind(command)?.done ?? command

/**
 * How an entry reads, and where it leads. Undefined when this version does not
 * know its command, or not in the form it was recorded in: then it has to be
 * shown as it stands. Instants are told as `moment` does, in UTC where none is given.
 */
export function entryTold(
  { command, payload }: Entry,
  moment: TellMoment = minuteOf,
): (Told & { readonly leads: Place }) | undefined {
  const face = faceBehind(command)
  const parsed = face?.record.safeParse(recordedIn(payload))
  if (!face || !parsed?.success) return undefined
  const record = parsed.data as never
  return { ...face.reads(record, moment), leads: face.leads(record) }
}

/** What a payload holds; undefined when it is no JSON, as one that was altered may be. */
export function recordedIn(payload: string): unknown {
  try {
    return JSON.parse(payload)
  } catch {
    return undefined
  }
}

const faceBehind = (command: string): AnyEntryFace | undefined => {
  if (isCommandName(command)) return faceOf(command)
  return ownMember(BESIDE_THE_DOOR, command)
}
