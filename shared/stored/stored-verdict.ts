import type { TrailVerdict } from '@/shared/trail/verify'
import { storedBreakInWords } from './break-in-words'
import type { StoredFindings } from './stored-comparison'

/** What the verification of a stored trail found: of the chain itself, and of all that its entries say was stored. */
export interface StoredVerdict {
  readonly intact: boolean
  readonly chain: TrailVerdict
  readonly stored: StoredFindings
}

export const storedVerdict = (chain: TrailVerdict, stored: StoredFindings): StoredVerdict => ({
  intact: chain.intact && stored.breakCount === 0,
  chain,
  stored,
})

/** How many breaks there are, of the chain and of what is stored. */
export const breakCountOf = ({ chain, stored }: StoredVerdict): number =>
  chain.breaks.length + stored.breakCount

/** The first breaks in words: those of the chain before those of what is stored. */
export const breaksInWords = ({ chain, stored }: StoredVerdict, max: number): readonly string[] =>
  [...chain.breaks.map(({ sentence }) => sentence), ...stored.breaks.map(storedBreakInWords)].slice(0, max)
