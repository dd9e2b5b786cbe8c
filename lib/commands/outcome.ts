import type { Place } from '@/shared/place'

/** What the caller of a command needs to go on, such as the code of what was made. */
export type Identifiers = Readonly<Record<string, string | number>>
export type NoIdentifiers = Readonly<Record<never, never>>

/** What came of a command. A refusal is a sentence; anything else that fails is thrown. */
export type Outcome<Result = Identifiers> =
  | {
      readonly ok: true
      readonly result: Result
      /** Where what was done can be seen; an answer remembered from before there was this has none. */
      readonly leads?: Place
      readonly seq: number
      readonly hash: string
    }
  | { readonly ok: false; readonly message: string; readonly fields: Readonly<Record<string, string>> }
