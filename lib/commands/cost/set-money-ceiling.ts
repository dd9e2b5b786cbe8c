import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { numberWanted } from '@/shared/columns/number-wanted'
import { Refused } from '@/shared/refused'

/** Says what the programme may cost in all, over how many boards; without an amount there is no ceiling any more. */
export const setMoneyCeiling = defineCommand({
  name: 'set-money-ceiling',
  input: z.strictObject({
    programme: programmeCode,
    amount: z
      .number({ error: numberWanted('The ceiling') })
      .positive('A ceiling is more than nothing; leave it empty where there is none.')
      .max(1e12, 'The ceiling is too large.')
      .nullable(),
    boards: wholeNumber('The number of boards', 1, 10_000_000).nullable().default(null),
    lots: wholeNumber('The number of lots', 1, 1_000_000).nullable().default(null),
    /** The number of the ceiling that the person had before them; 0 for none. */
    seen: wholeNumber('The ceiling', 0, 1_000_000),
    reason,
  }),
  load: (tx, _input, { programmeId }) =>
    tx.moneyCeiling.findFirst({ where: { programmeId }, orderBy: { number: 'desc' } }),
  decide(newest, { amount, boards, lots, seen, reason: why }) {
    if ((newest?.number ?? 0) !== seen)
      throw new Refused('The ceiling was set again since you read it. Load the page again.')
    if (amount !== null && boards === null)
      throw new Refused('A ceiling is for a number of boards.', {
        boards: 'Say for how many boards: what a board costs counts that often.',
      })
    if (lots !== null && boards !== null && lots > boards)
      throw new Refused('There are more lots than boards.', { lots: 'At most one lot a board.' })
    const over = amount === null ? { boards: null, lots: null } : { boards, lots }
    const before = newest && { amount: newest.amount, boards: newest.boards, lots: newest.lots }
    if ((before?.amount ?? null) === amount && before?.boards === over.boards && before.lots === over.lots)
      throw new Refused('This is the ceiling that stands. Nothing was changed.')
    if (!before && amount === null) throw new Refused('There is no ceiling to take away.')
    const ceiling = { number: seen + 1, amount, ...over, reason: why }
    return { change: ceiling, record: { ...ceiling, before } }
  },
  async apply(tx, ceiling, { programmeId, actor, now }) {
    await tx.moneyCeiling.create({ data: { ...ceiling, programmeId, authorId: actor.personId, at: now } })
  },
})
