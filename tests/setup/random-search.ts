import fc from 'fast-check'

/**
 * One seed, so that what passes once passes again and CI tells of the change and not of chance. `LAWS_SEED=random`
 * searches elsewhere each time, another number repeats what such a search found. A search ends in time: narrowing
 * down a counterexample of a whole programme could else go on for hours.
 */
const { LAWS_SEED = '20260720' } = process.env
const MAX_SEARCH_MS = 20_000

fc.configureGlobal({
  ...(LAWS_SEED === 'random' ? {} : { seed: Number(LAWS_SEED) }),
  interruptAfterTimeLimit: MAX_SEARCH_MS,
})
