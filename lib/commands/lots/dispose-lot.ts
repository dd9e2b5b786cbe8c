import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, reason } from '@/lib/commands/inputs'
import { loadLot } from '@/lib/commands/lots/load-lot'
import { atSupplier, lotRecordedIn } from '@/lib/commands/lots/recorded-at'
import { DISPOSITIONS } from '@/shared/records/lot'
import { Refused } from '@/shared/refused'

/** Quality decides what becomes of a lot. A later decision replaces an earlier one; the trail keeps both. */
export const disposeLot = defineCommand({
  name: 'dispose-lot',
  input: z.strictObject({
    ...lotRecordedIn,
    lot: line('The lot', 40),
    verdict: z.enum(DISPOSITIONS, { error: 'Choose what becomes of the lot.' }),
    reason,
  }),
  async load(tx, { lot: code }, { trailId }) {
    const lot = await loadLot(tx, trailId, code)
    const granted = await tx.concession.count({
      where: {
        programme: { OR: [{ id: trailId }, { allocations: { some: { lotId: lot.id } } }] },
        designAt: { not: null },
        qualityAt: { not: null },
        refusedAt: null,
      },
    })
    return { lot, granted }
  },
  decide({ lot, granted }, { verdict, reason: why }, { actor, today, subject }) {
    if (verdict === 'use under concession' && granted === 0) {
      throw new Refused(
        'No concession is granted in a programme that has this lot. Ask for one on the item whose finding fails.',
        { verdict: 'There is no granted concession.' },
      )
    }
    const before = (lot.disposition as { verdict: string } | null)?.verdict ?? null
    const disposition = { verdict, by: actor.name, on: today, reason: why }
    return {
      change: { id: lot.id, disposition },
      record: { ...atSupplier({ subject }), lot: lot.code, part: lot.part, before, ...disposition },
    }
  },
  async apply(tx, { id, disposition }) {
    await tx.lot.update({ where: { id }, data: { disposition } })
  },
})
