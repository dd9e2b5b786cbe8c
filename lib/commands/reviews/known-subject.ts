import { z } from 'zod'
import { line } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import type { Transaction } from '@/lib/db/transaction'
import { logCalled } from '@/lib/programme/works/shared-logs'
import { lotCalled } from '@/lib/programme/works/shared-lots'
import { findParameter, findRule } from '@/shared/catalogue/standard-plan'
import { ownMember } from '@/shared/own-member'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { Refused } from '@/shared/refused'
import { jointOfKey, SUBJECT_KINDS, type Subject } from '@/shared/reviews/subject'
import { recordOfKey } from '@/shared/reviews/subject-in-words'

/** What something is about, as a form or a caller gives it. */
export const subjectInput = z.strictObject({
  kind: z.enum(SUBJECT_KINDS, { error: 'Choose what it is about.' }),
  key: line('What it is about', 200),
})

/** A subject with its name, where no catalogue holds it. */
export interface NamedSubject {
  readonly kind: Subject['kind']
  readonly key: string
  readonly name?: string
}

/** The subject as an entry records it. Refused when the programme has no such thing. */
export async function knownSubject(
  tx: Transaction,
  programmeId: string,
  { kind, key }: Subject,
): Promise<NamedSubject> {
  const name = await nameOf(tx, programmeId, { kind, key })
  if (name === undefined) throw new Refused('This programme has nothing of that name to speak about.')
  return name ? { kind, key, name } : { kind, key }
}

/** The kind of that key, where this version knows it. */
const recordKindOf = (key: string): RecordKind | undefined => ownMember(RECORD_KINDS, key)

/** A programme with its code, by which lots and logs of other trails are told apart. */
const codedProgramme = (tx: Transaction, id: string) =>
  tx.programme.findUniqueOrThrow({ where: { id }, select: { id: true, code: true } })

/** Its name, '' where the key is name enough; undefined when there is none. */
async function nameOf(
  tx: Transaction,
  programmeId: string,
  { kind, key }: Subject,
): Promise<string | undefined> {
  const numbered = { programmeId, number: /^\d{1,6}$/.test(key) ? Number(key) : 0 }
  switch (kind) {
    case 'item':
    case 'set-aside':
      return (await loadPlanItem(tx, programmeId, key)).definition.title
    case 'finding':
      return findRule(key) && ''
    case 'parameter':
      return findParameter(key) && ''
    case 'action':
      return (await tx.action.findFirst({ where: numbered })) ? '' : undefined
    case 'concession':
      return (await tx.concession.findFirst({ where: numbered })) ? '' : undefined
    case 'study':
      return (await tx.optionStudy.findFirst({ where: numbered }))?.title
    case 'comment':
      return (await tx.comment.findFirst({ where: numbered })) ? '' : undefined
    case 'nonconformity':
      return (await tx.nonconformity.findFirst({ where: numbered }))?.title
    case 'lot':
      return (await lotCalled(tx, await codedProgramme(tx, programmeId), key)) ? '' : undefined
    case 'log':
      return (await logCalled(tx, await codedProgramme(tx, programmeId), key)) ? '' : undefined
    case 'joint':
      return jointOfKey(key) && ''
    case 'record': {
      const { kind: recordKind, id } = recordOfKey(key)
      if (!z.uuid().safeParse(id).success) return undefined
      const keptOnce = recordKindOf(recordKind)?.keptAt !== undefined
      const where = { kind: recordKind, id, ...(!keptOnce && { trailId: programmeId }) }
      return (await tx.record.findFirst({ where })) ? '' : undefined
    }
    // A point is known within its own minutes; whoever takes minutes looks there.
    case 'point':
      return undefined
  }
}
