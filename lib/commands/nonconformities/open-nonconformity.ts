import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, line, optionalLine, paragraph, programmeCode } from '@/lib/commands/inputs'
import { knownSubject, subjectInput } from '@/lib/commands/reviews/known-subject'
import { Prisma } from '@/lib/db/generated/client'
import { calendarDate } from '@/shared/columns/calendar-date'
import { Refused } from '@/shared/refused'

/** Records something found that does not fulfil what was required of it, where, and who sees to it. */
export const openNonconformity = defineCommand({
  name: 'open-nonconformity',
  input: z.strictObject({
    programme: programmeCode,
    title: line('The title'),
    found: paragraph('What was found'),
    foundOn: calendarDate('The day it was found'),
    owner: department,
    place: z.strictObject({
      joint: optionalLine('The joint', 80),
      part: optionalLine('The part', 120),
      lot: optionalLine('The lot', 80),
      assembly: optionalLine('The assembly', 80),
      line: optionalLine('The line', 80),
    }),
    source: subjectInput.nullable(),
  }),
  load: async (tx, { source }, { programmeId }) => ({
    source: source && (await knownSubject(tx, programmeId, source)),
    newest:
      (await tx.nonconformity.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  }),
  decide({ source, newest }, { title, found, foundOn, owner, place }, { newId, today }) {
    if (foundOn > today)
      throw new Refused('This day lies in the future.', { foundOn: 'This day lies in the future.' })
    const nonconformity = { id: newId(), number: newest + 1, title, found, foundOn, owner, place }
    return {
      change: { ...nonconformity, source: source && { kind: source.kind, key: source.key } },
      record: { ...nonconformity, source: source && { ...source } },
      result: { nonconformity: nonconformity.number },
    }
  },
  async apply(tx, nonconformity, { programmeId, actor, now }) {
    await tx.nonconformity.create({
      data: {
        ...nonconformity,
        source: nonconformity.source ?? Prisma.DbNull,
        programmeId,
        openedById: actor.personId,
        at: now,
      },
    })
  },
})
