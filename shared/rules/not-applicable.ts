import type { Judged } from './finding'

/**
 * The outcome of a rule whose matter this programme does not raise (no wave,
 * so no dwell). Nothing was looked at, so nothing is said to meet; it blocks
 * no gate, and the finding gives the reason.
 */
export const notApplicable = (reason: string): Judged => ({
  verdict: 'not applicable',
  found: reason,
  limit: 'Not required in this programme.',
  working: [],
  sources: [],
})
