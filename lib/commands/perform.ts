import { commandNamed, type InputOf, type ResultOf } from '@/lib/commands/all-commands'
import type { AnyCommand } from '@/lib/commands/command'
import { decideOn } from '@/lib/commands/decide-on'
import type { Outcome } from '@/lib/commands/outcome'
import { recallOutcome, rememberOutcome } from '@/lib/commands/idempotency'
import { lockSubject } from '@/lib/commands/lock-subject'
import { parseInput } from '@/lib/commands/parse-input'
import { readResets } from '@/lib/auth/password-reset'
import { verifySignature, type SignatureProof } from '@/lib/auth/signature'
import { inTransaction, type Transaction } from '@/lib/db/transaction'
import { log } from '@/lib/log/log'
import { openTrail, recordEntry } from '@/lib/trail/append-entry'
import { publishHead } from '@/lib/trail/publish-head'
import type { Actor } from '@/shared/actor'
import { faceOf, type CommandName } from '@/shared/commands/all-faces'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { TrailEntry, TrailHead } from '@/shared/trail/entry'

export interface Circumstances {
  /** One per form or call, so that a retry or a double click does nothing twice. */
  readonly key: string
  /** For commands that are signatures. */
  readonly proof?: SignatureProof
  /** The moment, for the demo and for tests; otherwise now. */
  readonly at?: Date
}

/** The only door for change, for callers whose input the compiler has checked. */
export const perform = <N extends CommandName>(
  personId: string,
  name: N,
  input: InputOf<N>,
  circumstances: Circumstances,
): Promise<Outcome<ResultOf<N>>> =>
  performUnparsed(personId, name, input, circumstances) as Promise<Outcome<ResultOf<N>>>

/**
 * The same door, for what comes from outside and is only known once parsed: forms and machines.
 * Parses, then in one transaction locks, loads, authorises on the rows just
 * read, decides, applies, and appends to the trail.
 */
export async function performUnparsed(
  personId: string,
  name: CommandName,
  input: unknown,
  circumstances: Circumstances,
): Promise<Outcome> {
  try {
    const command = commandNamed(name)
    const parsed = parseInput(command.input, input)
    if (faceOf(name).may.signature) await verifySignature(personId, circumstances.proof)
    const { entry, outcome } = await inTransaction((tx) =>
      performIn(tx, personId, command, parsed, circumstances),
    )
    if (entry) await publishHead(entry)
    return outcome
  } catch (error) {
    if (error instanceof Refused) return { ok: false, message: error.message, fields: error.fields }
    log.error('A command failed.', { command: name, error })
    throw error
  }
}

interface Performed {
  readonly entry: TrailEntry | undefined
  readonly outcome: Outcome
}

async function performIn(
  tx: Transaction,
  personId: string,
  command: AnyCommand,
  input: unknown,
  { key, at = new Date() }: Circumstances,
): Promise<Performed> {
  const now = at.toISOString()
  const subject = await lockSubject(tx, command.name, input)
  const before = await recallOutcome(tx, personId, key, command.name, input)
  if (before) return { entry: undefined, outcome: before }

  const { decision, context } = await decideOn(tx, personId, command, input, { subject, at })
  const { actor } = context
  await command.apply(tx, decision.change as never, context)

  const target = subject.opens ? { trailId: subject.id, seq: 0, hash: '' } : subject.head
  if (subject.opens) await openTrail(tx, subject.id)
  const entry = await recordAll(tx, target, actor, now, [
    ...(decision.acts ?? []),
    { command: command.name, record: decision.record },
  ])
  const outcome: Outcome = {
    ok: true,
    result: decision.result ?? {},
    leads: faceOf(command.name).leads(decision.record as never),
    seq: entry.seq,
    hash: entry.hash,
  }
  await rememberOutcome(tx, personId, key, command.name, input, outcome, now)
  return { entry, outcome }
}

/** Appends an entry for each thing done, in one transaction; answers the last, which is the command's own. */
async function recordAll(
  tx: Transaction,
  head: TrailHead,
  actor: Actor,
  at: string,
  done: readonly { readonly command: CommandName; readonly record: Entry }[],
): Promise<TrailEntry> {
  const [first, ...rest] = done
  if (!first) throw new Error('A command records at least its own entry.')
  const entry = await recordEntry(tx, head, {
    at,
    actorId: actor.personId,
    actorName: actor.name,
    command: first.command,
    payload: await recordOf(tx, actor, first.command, first.record),
  })
  if (rest.length === 0) return entry
  return recordAll(tx, { trailId: head.trailId, seq: entry.seq, hash: entry.hash }, actor, at, rest)
}

/**
 * What the entry says. Beside what somebody did while standing in for another stands for whom. Beside a signature of
 * somebody whom an administrator gave a password stands that they did: they could have signed in that name.
 */
async function recordOf(tx: Transaction, actor: Actor, name: CommandName, record: Entry): Promise<Entry> {
  const { personId, standsInFor } = actor
  const told = standsInFor
    ? { ...record, standingInFor: standsInFor.map((absent) => ({ ...absent })) }
    : record
  if (!faceOf(name).may.signature) return told
  const reset = (await readResets(tx, personId)).at(-1)
  if (!reset) return told
  const { at, byId, byName, changedAt } = reset
  return { ...told, passwordReset: { at, byId, byName, changedAt } }
}

type Entry = Readonly<Record<string, JsonValue>>
