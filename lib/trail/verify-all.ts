import { outcomeOf, type TrailOutcome } from '@/lib/trail/trail-outcome'
import { verdictOnStored, type FilesSeen } from '@/lib/trail/verify-stored'

/** How far the verification of several trails has come; the last says what was found. */
export type AllStep =
  { readonly done: number; readonly of: number } | { readonly outcomes: readonly TrailOutcome[] }

/** Verifies trails one after the other, each with all that its entries say was stored. */
export async function* verifyAll(trails: readonly { id: string; code: string }[]): AsyncGenerator<AllStep> {
  const seen: FilesSeen = new Map()
  const outcomes: TrailOutcome[] = []
  for (const { id, code } of trails) {
    outcomes.push(outcomeOf(code, await verdictOnStored(id, seen)))
    yield { done: outcomes.length, of: trails.length }
  }
  yield { outcomes }
}
