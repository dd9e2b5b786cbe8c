import { verdictOnStored } from '@/lib/trail/verify-stored'

/** What the verification of one of several trails found. */
export interface TrailOutcome {
  readonly code: string
  readonly intact: boolean
  readonly sentence: string
}

/** How far the verification of several trails has come; the last says what was found. */
export type AllStep =
  { readonly done: number; readonly of: number } | { readonly outcomes: readonly TrailOutcome[] }

/** Verifies trails one after the other, each against itself and its seals. */
export async function* verifyAll(trails: readonly { id: string; code: string }[]): AsyncGenerator<AllStep> {
  const outcomes: TrailOutcome[] = []
  for (const { id, code } of trails) {
    const { intact, sentence } = await verdictOnStored(id)
    outcomes.push({ code, intact, sentence })
    yield { done: outcomes.length, of: trails.length }
  }
  yield { outcomes }
}
