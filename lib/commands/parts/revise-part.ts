import { z } from 'zod'
import type { Prisma } from '@/lib/db/generated/client'
import { defineCommand } from '@/lib/commands/command'
import { reason, wholeNumber, worksCode } from '@/lib/commands/inputs'
import { partInUse } from '@/lib/commands/parts/load-part'
import { partValues, settledValues } from '@/lib/commands/parts/part-input'
import { Refused } from '@/shared/refused'
import { partDifference } from '@/shared/works/part-difference'

/** Gives a part other values, the whole of them; `seen` is the revision that its author had before them. */
export const revisePart = defineCommand({
  name: 'revise-part',
  input: z.strictObject({
    part: worksCode('The part'),
    values: partValues,
    seen: wholeNumber('The revision seen', 1, 1_000_000),
    reason,
  }),
  load: (tx, _input, { trailId }) => partInUse(tx, trailId),
  decide({ code, newest }, { values, seen, reason: why }) {
    const settled = settledValues(values)
    if (newest.number !== seen)
      throw new Refused(
        `Somebody revised part ${code} meanwhile: it stands in revision ${newest.number}. What you typed is kept; compare before you save.`,
        { seen: String(newest.number) },
      )
    if (partDifference(newest.values, settled).length === 0)
      throw new Refused('Nothing differs from the newest revision.')
    const revision = { number: newest.number + 1, values: settled, reason: why }
    return {
      change: revision,
      record: { part: code, ...revision, before: newest.values },
      result: { part: code },
    }
  },
  async apply(tx, { number, values, reason: why }, { trailId, actor, now }) {
    await tx.partRevision.create({
      data: {
        partId: trailId,
        number,
        values: values as Prisma.InputJsonObject,
        reason: why,
        authorId: actor.personId,
        at: now,
      },
    })
  },
})
