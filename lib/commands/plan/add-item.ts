import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode } from '@/lib/commands/inputs'
import { addedItemSchema, storedItem } from '@/shared/catalogue/added-item'
import { Refused } from '@/shared/refused'

/** Adds an item of the programme's own to one of its stages. */
export const addItem = defineCommand({
  name: 'add-item',
  input: z.strictObject({ programme: programmeCode, item: addedItemSchema }),
  load: (tx, _input, { programmeId }) =>
    tx.planItem.findMany({ where: { programmeId }, select: { key: true, position: true, added: true } }),
  decide(rows, { item }) {
    const title = item.title.toLowerCase()
    const twin = rows.find(
      ({ added }) => (added as { title?: string } | null)?.title?.toLowerCase() === title,
    )
    if (twin)
      throw new Refused(`The plan has an item “${item.title}” already.`, {
        'item.title': 'The plan has an item of this title already.',
      })
    const own = rows.filter(({ added }) => added !== null).length
    const key = `own-${own + 1}`
    const added = storedItem(item)
    const position = Math.max(0, ...rows.map((row) => row.position)) + 1
    return {
      change: { key, stage: item.stage, added, position },
      record: { item: key, position, ...added },
      result: { item: key },
    }
  },
  async apply(tx, { key, stage, added, position }, { programmeId }) {
    await tx.planItem.create({ data: { programmeId, key, stage, position, added: added as object } })
  },
})
