import type { z } from 'zod'
import type { Transaction } from '@/lib/db/transaction'
import type { Actor, CommandName } from '@/shared/policy'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** What the door hands to a command beside its input. */
export interface Context {
  readonly actor: Actor
  /** The moment of the command, RFC 3339 UTC with milliseconds. */
  readonly now: string
  /** The same moment's date, 'YYYY-MM-DD' in UTC. */
  readonly today: string
  /** The programme in question; the programme being opened for `open-programme`; '' outside any. */
  readonly programmeId: string
  /** The trail as the command finds it. */
  readonly head: { readonly seq: number; readonly hash: string }
  readonly newId: () => string
}

/** What a command decided: what to change, what the trail says of it, what the caller is told. */
export interface Decision<Change> {
  readonly change: Change
  /** What changed, in full and for good: it goes into the trail as it stands. */
  readonly record: Readonly<Record<string, JsonValue>>
  /** Identifiers the caller needs to go on, such as the code of what was made. */
  readonly result?: Readonly<Record<string, string | number>>
}

/**
 * One verb. `load` reads the rows it needs, `decide` is pure and throws Refused
 * when it may not be, `apply` writes. The door parses, locks, authorises and records.
 */
export interface Command<Input, State, Change> {
  readonly name: CommandName
  readonly input: z.ZodType<Input>
  readonly load: (tx: Transaction, input: Input, context: Context) => Promise<State>
  readonly decide: (state: State, input: Input, context: Context) => Decision<Change>
  readonly apply: (tx: Transaction, change: Change, context: Context) => Promise<void>
}

/** A command whose types are no longer known, as the registry holds it. */
export interface AnyCommand {
  readonly name: CommandName
  readonly input: z.ZodType
  readonly load: (tx: Transaction, input: never, context: Context) => Promise<unknown>
  readonly decide: (state: never, input: never, context: Context) => Decision<unknown>
  readonly apply: (tx: Transaction, change: never, context: Context) => Promise<void>
}

export const defineCommand = <Input, State, Change>(
  command: Command<Input, State, Change>,
): Command<Input, State, Change> => command

/** For commands that need nothing but their input. */
export const loadNothing = async (): Promise<undefined> => undefined
