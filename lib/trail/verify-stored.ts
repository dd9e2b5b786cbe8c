import { gatesOf, trailEntries } from '@/lib/exports/trail-bundle'
import { database } from '@/lib/db/client'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { gateSeals } from '@/shared/trail/bundle'
import { trailVerifier, type TrailVerdict } from '@/shared/trail/verify'

/** How far a verification has come. */
export type VerificationStep =
  { readonly done: number; readonly of: number } | { readonly verdict: TrailVerdict }

/** Verifies a stored trail against itself and against its gates' seals, saying how far it is. */
export async function* verifyStored(programmeId: string): AsyncGenerator<VerificationStep> {
  const of =
    (await database().trail.findUnique({ where: { id: programmeId }, select: { seq: true } }))?.seq ?? 0
  const verifier = trailVerifier(nativeSha256, gateSeals(await gatesOf(programmeId)))
  let done = 0
  for await (const entries of trailEntries(programmeId)) {
    for (const entry of entries) verifier.add(entry)
    done += entries.length
    yield { done, of }
  }
  yield { verdict: verifier.finish() }
}

/** The verdict alone. */
export async function verdictOnStored(programmeId: string): Promise<TrailVerdict> {
  for await (const step of verifyStored(programmeId)) if ('verdict' in step) return step.verdict
  throw new Error('The verification ended without a verdict.')
}
