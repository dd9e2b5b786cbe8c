import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode, reason } from '@/lib/commands/inputs'
import { findItem } from '@/shared/catalogue/standard-plan'
import { Refused } from '@/shared/refused'

/** Takes an item up that the standard plan has today, and had not, or the programme left out, when it was opened. */
export const takeUpItem = defineCommand({
  name: 'take-up-item',
  input: z.strictObject({ programme: programmeCode, item: line('The item'), reason }),
  load: (tx, _input, { programmeId }) =>
    tx.planItem.findMany({ where: { programmeId }, select: { key: true, position: true } }),
  decide(rows, { item: key, reason: why }) {
    const definition = findItem(key)
    if (!definition) {
      const message = 'The standard plan has no such item.'
      throw new Refused(message, { item: message })
    }
    if (rows.some((row) => row.key === key)) {
      const message = `“${definition.title}” is in the plan already.`
      throw new Refused(message, { item: message })
    }
    const { stage, title } = definition
    const position = Math.max(0, ...rows.map((row) => row.position)) + 1
    return {
      change: { key, stage, position },
      record: { item: key, stage, position, title, reason: why },
      result: { item: key },
    }
  },
  async apply(tx, planned, { programmeId }) {
    await tx.planItem.create({ data: { programmeId, ...planned } })
  },
})
