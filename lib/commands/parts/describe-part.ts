import { z } from 'zod'
import type { Prisma } from '@/lib/db/generated/client'
import { defineCommand } from '@/lib/commands/command'
import { reason, worksCode } from '@/lib/commands/inputs'
import { partValues, settledValues } from '@/lib/commands/parts/part-input'
import { openSubject } from '@/lib/commands/works/open-subject'
import { Refused } from '@/shared/refused'

/** Describes a part of the works for the first time, under its part number. */
export const describePart = defineCommand({
  name: 'describe-part',
  input: z.strictObject({ code: worksCode('The part number'), values: partValues, reason }),
  load: (tx, { code }) =>
    tx.part.findFirst({
      where: { code: { equals: code.replace(/[\\%_]/g, '\\$&'), mode: 'insensitive' } },
      select: { code: true },
    }),
  decide(twin, { code, values, reason: why }, { trailId }) {
    if (twin)
      throw new Refused(`Part ${twin.code} is described already. Revise it there.`, {
        code: 'This number is taken.',
      })
    const part = { id: trailId, code, values: settledValues(values), reason: why }
    return { change: part, record: { ...part, values: part.values as Described }, result: { part: code } }
  },
  async apply(tx, { id, code, values, reason: why }, { actor, now }) {
    await openSubject(tx, { id, kind: 'part', code })
    await tx.part.create({ data: { id, code, describedById: actor.personId, describedAt: now } })
    await tx.partRevision.create({
      data: {
        partId: id,
        number: 1,
        values: values as Prisma.InputJsonObject,
        reason: why,
        authorId: actor.personId,
        at: now,
      },
    })
  },
})

/** Every part has a description. */
type Described = ReturnType<typeof settledValues> & { readonly description: string }
