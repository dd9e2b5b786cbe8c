import type { Judged } from './finding'

/**
 * The outcome of a rule whose question does not arise in this programme (no
 * wave, so no dwell): nothing stands in the way, and the finding says why.
 */
export const notAsked = (found: string): Judged => ({
  verdict: 'meets',
  found,
  limit: 'Nothing is asked here.',
  working: [],
  sources: [],
})
