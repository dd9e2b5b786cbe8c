import { z } from 'zod'
import { id, line, optionalLine } from '@/lib/commands/inputs'
import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'
import type { Present } from '@/shared/reviews/review'

/** Who was there, and who chairs it. */
export const attendanceInput = {
  chair: id,
  members: z.array(id).max(100, 'At most 100 members.'),
  guests: z
    .array(
      z.strictObject({ name: line('The guest’s name', 80), from: optionalLine('What they came for', 120) }),
    )
    .max(50, 'At most 50 guests.'),
}
interface Attending {
  readonly chair: string
  readonly members: readonly string[]
  readonly guests: readonly { readonly name: string; readonly from: string }[]
}

/** Names of the programme’s members by their ids. */
export async function memberNames(
  tx: Transaction,
  programmeId: string,
): Promise<ReadonlyMap<string, string>> {
  const people = await tx.person.findMany({
    where: { memberships: { some: { programmeId } } },
    select: { id: true, name: true },
  })
  return new Map(people.map(({ id: personId, name }) => [personId, name]))
}

/** The people as they are minuted: the chair first. Refused when somebody named as a member is none. */
export function presentOf(
  names: ReadonlyMap<string, string>,
  { chair, members, guests }: Attending,
): { present: Present[]; chairName: string } {
  const member = (personId: string): Present => {
    const name = names.get(personId)
    if (name === undefined)
      throw new Refused('Somebody named is not a member of this programme. Name them as a guest.', {
        members: 'Not a member.',
      })
    return { kind: 'member', personId, name }
  }
  const ids = [...new Set([chair, ...members])]
  return {
    present: [
      ...ids.map(member),
      ...guests.map(({ name, from }) => ({ kind: 'guest' as const, name, from })),
    ],
    chairName: names.get(chair) ?? '',
  }
}
