import { z } from 'zod'
import { defineCommand, loadNothing } from '@/lib/commands/command'

/** Whether a person wants to be told by mail, once a day, what is new on their desk. */
export const chooseDigest = defineCommand({
  name: 'choose-digest',
  input: z.strictObject({ wanted: z.boolean({ error: 'Say whether you want the mail.' }) }),
  load: loadNothing,
  decide: (_nothing, { wanted }, { actor }) => ({
    change: { wanted },
    record: { person: actor.name, wanted },
  }),
  async apply(tx, { wanted }, { actor: { personId }, now }) {
    const said = { wanted, chosenAt: now }
    await tx.digestWish.upsert({ where: { personId }, create: { personId, ...said }, update: said })
  },
})
