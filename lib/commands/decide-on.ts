import { v7 } from 'uuid'
import { actorOn } from '@/lib/auth/actor'
import type { AnyCommand, Context, Decision } from '@/lib/commands/command'
import type { LockedSubject } from '@/lib/commands/lock-subject'
import type { Transaction } from '@/lib/db/transaction'
import { dateAtWorks } from '@/lib/settings/works'
import { partRefusal, refusal } from '@/shared/policy'
import { Refused } from '@/shared/refused'

interface Asked {
  readonly subject: LockedSubject
  readonly at: Date
}

/** What a person decides by a command, on the rows as they are just read: authorised, and not written yet. */
export async function decideOn(
  tx: Transaction,
  personId: string,
  command: AnyCommand,
  input: unknown,
  { subject, at }: Asked,
): Promise<{ readonly decision: Decision<unknown>; readonly context: Context }> {
  const today = dateAtWorks(at)
  const actor = await actorOn(tx, personId, subject, today)
  refuse(partRefusal(command.name, actor))
  const context: Context = {
    actor,
    now: at.toISOString(),
    today,
    programmeId: subject.kind === 'programme' ? subject.id : '',
    trailId: subject.id,
    subject,
    head: subject.head,
    // RFC 9562 version 7: of one command's rows the id tells the order, since all have one instant.
    newId: () => v7(),
  }
  const state = await command.load(tx, input as never, context)
  refuse(refusal(command.name, actor, command.subject?.(state as never, input as never) as never))
  return { decision: command.decide(state as never, input as never, context), context }
}

function refuse(refused: string | undefined): void {
  if (refused) throw new Refused(refused)
}
