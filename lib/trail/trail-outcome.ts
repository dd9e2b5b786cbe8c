import { breakCountOf, breaksInWords, type StoredVerdict } from '@/shared/stored/stored-verdict'

/** What the verification of one of several trails found, in brief. */
export interface TrailOutcome {
  readonly code: string
  readonly intact: boolean
  readonly entries: number
  /** The first break, in words. */
  readonly firstBreak: string | undefined
  readonly breaks: number
  /** Places where time runs backwards. */
  readonly clockSteps: number
  /** Rows written before their content was hashed. */
  readonly unhashedRows: number
}

export const outcomeOf = (code: string, verdict: StoredVerdict): TrailOutcome => ({
  code,
  intact: verdict.intact,
  entries: verdict.chain.entryCount,
  firstBreak: breaksInWords(verdict, 1)[0],
  breaks: breakCountOf(verdict),
  clockSteps: verdict.chain.clockSteps.length,
  unhashedRows: verdict.stored.unhashedRows,
})
