import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode, reason } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { Prisma } from '@/lib/db/generated/client'
import { Refused } from '@/shared/refused'

/** Brings an item back that was set aside, or takes the proposal back. */
export const restoreItem = defineCommand({
  name: 'restore-item',
  input: z.strictObject({ programme: programmeCode, item: line('The item'), reason }),
  load: (tx, { item }, { programmeId }) => loadPlanItem(tx, programmeId, item),
  decide({ definition, tailoredOut }, { reason: why }) {
    if (!tailoredOut) throw new Refused('The item is in the plan.')
    return {
      change: { key: definition.key },
      record: { item: definition.key, title: definition.title, reason: why },
    }
  },
  async apply(tx, { key }, { programmeId }) {
    await tx.planItem.update({
      where: { programmeId_key: { programmeId, key } },
      data: { setAside: Prisma.DbNull },
    })
  },
})
