import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { reason, worksCode } from '@/lib/commands/inputs'
import { partAsItStands } from '@/lib/commands/parts/load-part'
import { Refused } from '@/shared/refused'

/** A part that was withdrawn may be listed again; what was approved of its values before holds as it did. */
export const reinstatePart = defineCommand({
  name: 'reinstate-part',
  input: z.strictObject({ part: worksCode('The part'), reason }),
  load: (tx, _input, { trailId }) => partAsItStands(tx, trailId),
  decide({ code, withdrawn, newest }, { reason: why }) {
    if (!withdrawn) throw new Refused(`Part ${code} is in use.`)
    return {
      change: undefined,
      record: { part: code, description: String(newest.values['description']), reason: why },
      result: { part: code },
    }
  },
  async apply(tx, _change, { trailId }) {
    await tx.part.update({
      where: { id: trailId },
      data: { withdrawnById: null, withdrawnAt: null, withdrawnWhy: null },
    })
  },
})
