import type { z } from 'zod'
import type { Identifiers, NoIdentifiers } from '@/lib/commands/outcome'
import type { Transaction } from '@/lib/db/transaction'
import type { Actor } from '@/shared/actor'
import type {
  CommandName,
  NameWithoutSubject,
  NameWithSubject,
  RecordOf,
  SubjectOf,
} from '@/shared/commands/all-faces'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { TrailKind } from '@/shared/works/works-kind'

/** What the door hands to a command beside its input. */
export interface Context {
  readonly actor: Actor
  /** The moment of the command, RFC 3339 UTC with milliseconds. */
  readonly now: string
  /** The same moment's date, 'YYYY-MM-DD' at the works. */
  readonly today: string
  /** The programme in question; the programme being opened for `open-programme`; '' outside any. */
  readonly programmeId: string
  /** The id of what the command is about, a programme or something of the works, and so of its trail; '' for the installation. */
  readonly trailId: string
  /** What it is about: of something being opened the code is not known yet. */
  readonly subject: { readonly kind: TrailKind; readonly code: string }
  /** The trail as the command finds it. */
  readonly head: { readonly seq: number; readonly hash: string }
  readonly newId: () => string
}

/** What a command decided: what to change, what the trail says of it, what the caller is told. */
export interface Decision<Change, Recorded = unknown, Result = Identifiers> {
  readonly change: Change
  /** What changed, in full and for good: it goes into the trail as it stands. At least what the command's face tells of. */
  readonly record: Recorded & Readonly<Record<string, JsonValue>>
  /** What it does at once of what other commands do one by one: an entry each, before its own. */
  readonly acts?: readonly Act[]
  /** Identifiers the caller needs to go on, such as the code of what was made. */
  readonly result?: Result
}

/** One thing done within another command, recorded as if it had been given alone. */
export type Act = {
  readonly [N in CommandName]: {
    readonly command: N
    readonly record: RecordOf<N> & Readonly<Record<string, JsonValue>>
  }
}[CommandName]

/**
 * One verb's work; its face is in `shared/commands`. `load` reads the rows it
 * needs and refuses what is not there, `decide` is pure and throws Refused when
 * it may not be, `apply` writes. The door parses, locks, authorises and records.
 */
export interface Command<N extends CommandName, Schema extends z.ZodType, State, Change, Result> {
  readonly name: N
  readonly input: Schema
  readonly load: (tx: Transaction, input: z.output<Schema>, context: Context) => Promise<State>
  readonly decide: (
    state: State,
    input: z.output<Schema>,
    context: Context,
  ) => Decision<Change, RecordOf<N>, Result>
  readonly apply: (tx: Transaction, change: Change, context: Context) => Promise<void>
}

/** One whose face asks whose it is: `subject` answers from the rows just read. */
interface CommandOn<N extends CommandName, Schema extends z.ZodType, State, Change, Result> extends Command<
  N,
  Schema,
  State,
  Change,
  Result
> {
  readonly subject: (state: State, input: z.output<Schema>) => SubjectOf<N>
}

/** A command whose types are no longer known, as it is found by its name. */
export interface AnyCommand {
  readonly name: CommandName
  readonly input: z.ZodType
  readonly load: (tx: Transaction, input: never, context: Context) => Promise<unknown>
  readonly subject?: (state: never, input: never) => unknown
  readonly decide: (state: never, input: never, context: Context) => Decision<unknown>
  readonly apply: (tx: Transaction, change: never, context: Context) => Promise<void>
}

export function defineCommand<
  N extends NameWithSubject,
  Schema extends z.ZodType,
  State,
  Change,
  Result extends Identifiers = NoIdentifiers,
>(command: CommandOn<N, Schema, State, Change, Result>): CommandOn<N, Schema, State, Change, Result>
export function defineCommand<
  N extends NameWithoutSubject,
  Schema extends z.ZodType,
  State,
  Change,
  Result extends Identifiers = NoIdentifiers,
>(command: Command<N, Schema, State, Change, Result>): Command<N, Schema, State, Change, Result>
export function defineCommand(command: AnyCommand): AnyCommand {
  return command
}

/** For commands that need nothing but their input. */
export const loadNothing = async (): Promise<undefined> => undefined
