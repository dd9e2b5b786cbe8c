import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode } from '@/lib/commands/inputs'
import { loadLot } from '@/lib/commands/lots/load-lot'
import { Refused } from '@/shared/refused'

/** Records which assemblies parts of a lot went into. */
export const traceLot = defineCommand({
  name: 'trace-lot',
  input: z.strictObject({
    programme: programmeCode,
    lot: line('The lot', 40),
    assemblies: z
      .array(line('The assembly', 40))
      .min(1, 'Name at least one assembly.')
      .max(5000, 'At most 5000 assemblies at once.'),
  }),
  load: (tx, { lot }, { trailId }) => loadLot(tx, trailId, lot),
  decide(lot, { assemblies }) {
    const added = [...new Set(assemblies)].filter((assembly) => !lot.usedIn.includes(assembly))
    if (added.length === 0) throw new Refused(`Lot ${lot.code} is recorded for all of these already.`)
    return {
      change: { id: lot.id, usedIn: [...lot.usedIn, ...added] },
      record: { lot: lot.code, part: lot.part, assemblies: added },
    }
  },
  async apply(tx, { id, usedIn }) {
    await tx.lot.update({ where: { id }, data: { usedIn } })
  },
})
