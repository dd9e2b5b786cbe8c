import { commandNamed, type ChangeOf } from '@/lib/commands/all-commands'
import { decideOn } from '@/lib/commands/decide-on'
import { lockSubject } from '@/lib/commands/lock-subject'
import { parseInput } from '@/lib/commands/parse-input'
import { inTransactionUndone } from '@/lib/db/transaction'
import type { CommandName } from '@/shared/commands/all-faces'

/** What a command would write, and of whose trail it would be told. */
export interface Considered<N extends CommandName> {
  readonly trailId: string
  /** The code of what it is about. */
  readonly code: string
  readonly change: ChangeOf<N>
}

/**
 * Decides a command on the rows as they stand, for the person who would give it, and keeps nothing. Refused like the
 * command itself, but for a signature, which is only given with it.
 */
export async function consider<N extends CommandName>(
  personId: string,
  name: N,
  input: unknown,
  at: Date,
): Promise<Considered<N>> {
  const command = commandNamed(name)
  const parsed = parseInput(command.input, input)
  return inTransactionUndone(async (tx) => {
    const subject = await lockSubject(tx, name, parsed)
    const { decision } = await decideOn(tx, personId, command, parsed, { subject, at })
    return { trailId: subject.id, code: subject.code, change: decision.change as ChangeOf<N> }
  })
}
