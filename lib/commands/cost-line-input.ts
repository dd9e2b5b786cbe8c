import { z } from 'zod'
import type { StoredAmount } from '@/shared/cost/amount'
import { COST_KINDS, COST_PERS, perOf } from '@/shared/cost/cost-line'
import { numberOrRangeTyped, rangeOfText } from '@/shared/quantity/range-text'

const MOST = 1e9
const WANTED =
  'An amount is a number, such as 0.42, or a range, such as 120 to 150. Left empty, it is not known.'

/** An amount as a number, a range in any usual writing, or nothing where it is not known. */
const amount = z
  .union([z.number(), z.string().trim().max(60, WANTED), z.null()], { error: WANTED })
  .default(null)
  .transform((given, context): number | `${number}..${number}` | null => {
    if (given === null || given === '') return null
    const stored = typeof given === 'number' ? given : (rangeTextOf(given) ?? numberOrRangeTyped(given))
    if (stored === undefined || !liesWithin(stored)) {
      context.addIssue({
        code: 'custom',
        message: stored === undefined ? WANTED : 'An amount lies between 0 and 1 000 000 000.',
      })
      return null
    }
    return stored
  })

const rangeTextOf = (text: string) => (rangeOfText(text) ? (text as `${number}..${number}`) : undefined)

function liesWithin(stored: NonNullable<StoredAmount>): boolean {
  const ends = typeof stored === 'number' ? { from: stored, to: stored } : rangeOfText(stored)
  return ends !== undefined && ends.from >= 0 && ends.to <= MOST
}

const parts = {
  kind: z.enum(COST_KINDS, {
    error: 'Say what the amount is for: a piece, set-up, test, tooling, something else, or a lead time.',
  }),
  per: z
    .enum(COST_PERS, { error: 'Say whether the amount is for a board, a lot, or once.' })
    .nullable()
    .default(null),
  amount,
}

const MOST_LINES = 40

/** Amounts that somebody names; each counted as its kind usually is where nothing is said. */
export const costLines = z
  .array(z.strictObject(parts).transform((line) => ({ ...line, per: perOf(line.kind, line.per) })))
  .max(MOST_LINES, `At most ${MOST_LINES} amounts.`)

/** The same, each for one alternative of a study or, where none is named, for all. */
export const answeredLines = z
  .array(
    z
      .strictObject({ ...parts, alternative: z.string().trim().max(60).nullable().default(null) })
      .transform((line) => ({
        ...line,
        per: perOf(line.kind, line.per),
        alternative: line.alternative || null,
      })),
  )
  .max(MOST_LINES, `At most ${MOST_LINES} amounts.`)
