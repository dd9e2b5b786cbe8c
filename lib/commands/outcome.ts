/** What came of a command. A refusal is a sentence; anything else that fails is thrown. */
export type Outcome =
  | {
      readonly ok: true
      readonly result: Readonly<Record<string, string | number>>
      readonly seq: number
      readonly hash: string
    }
  | { readonly ok: false; readonly message: string; readonly fields: Readonly<Record<string, string>> }
