import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, reason } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

export const withdrawInspection = defineCommand({
  name: 'withdraw-inspection',
  input: z.strictObject({ programme: programmeCode, inspection: id, reason }),
  load: (tx, { inspection }, { programmeId }) =>
    tx.inspection.findFirst({ where: { id: inspection, programmeId, withdrawnAt: null } }),
  decide(inspection, { reason: why }) {
    if (!inspection) throw new Refused('This inspection does not count any more.')
    const { id: key, assembly, inspectedOn, jointsSeen, defects } = inspection
    return {
      change: { id: key, why },
      record: {
        inspection: key,
        assembly,
        inspectedOn,
        jointsSeen,
        defects: Array.isArray(defects) ? defects.length : 0,
        reason: why,
      },
    }
  },
  async apply(tx, { id: key, why }, { now }) {
    await tx.inspection.update({ where: { id: key }, data: { withdrawnAt: now, withdrawnWhy: why } })
  },
})
