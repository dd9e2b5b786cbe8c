import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { fromTo } from '@/shared/commands/named'
import { formatNumber } from '@/shared/quantity/format'

const ceiling = z.object({
  amount: z.number().nullable(),
  boards: z.number().nullable(),
  lots: z.number().nullable(),
})

export const setMoneyCeiling = defineFace({
  label: 'Set the ceiling of the project’s money',
  done: 'Set the ceiling of the project’s money',
  may: { scope: 'programme', lead: true },
  record: ceiling.extend({ number: z.number(), before: ceiling.nullable(), reason: z.string() }),
  reads: ({ amount, boards, lots, before, reason }) => ({
    subject: 'the project’s money',
    what: before
      ? fromTo(ceilingInWords(before), ceilingInWords({ amount, boards, lots }))
      : ceilingInWords({ amount, boards, lots }),
    words: reason,
  }),
  leads: () => ({ kind: 'cost' }),
})

function ceilingInWords({ amount, boards, lots }: z.output<typeof ceiling>): string {
  if (amount === null) return 'no ceiling'
  const over = boards === null ? '' : ` for ${boards} boards${lots === null ? '' : ` in ${lots} lots`}`
  return `${formatNumber(amount, 9)}${over}`
}
