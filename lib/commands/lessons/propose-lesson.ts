import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, paragraph, programmeCode } from '@/lib/commands/inputs'
import { sourceInput, sourceNamed } from '@/lib/commands/lessons/lesson-source'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import { lessonOf, withProgramme } from '@/lib/programme/lesson-row'
import { lessonName } from '@/shared/lessons/lesson'
import {
  changeInWords,
  changeRefused,
  lessonChangeSchema,
  sameChange,
  type LessonChange,
} from '@/shared/lessons/lesson-change'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

const asJson = (change: LessonChange): JsonValue =>
  change.kind === 'item' ? { kind: change.kind, item: { ...change.item } } : { ...change }

/** Proposes what later programmes should start with, for something this one learnt; quality decides. */
export const proposeLesson = defineCommand({
  name: 'propose-lesson',
  input: z.strictObject({
    programme: programmeCode,
    title: line('The title', 120),
    learnt: paragraph('What was learnt'),
    source: sourceInput,
    change: lessonChangeSchema,
  }),
  load: async (tx, _input, context) => ({
    judged: await loadJudged(tx, context),
    own: await tx.lesson.count({ where: { programmeId: context.programmeId } }),
    others: (
      await tx.lesson.findMany({
        where: { OR: [{ decision: null }, { decision: 'accepted', retiredAt: null }] },
        ...withProgramme,
      })
    ).map(lessonOf),
  }),
  decide({ judged, own, others }, { title, learnt, source, change }, { newId }) {
    const nothing = changeRefused(change)
    if (nothing) throw new Refused(nothing, { 'change.value': nothing })
    const twin = others.find((other) => sameChange(other.change, change))
    if (twin)
      throw new Refused(
        `${lessonName(twin)} ${twin.decided ? 'brought' : 'proposes'} the same change: “${twin.title}”.`,
      )
    const lesson = { number: own + 1, title, learnt, source: sourceNamed(judged, source), change }
    return {
      change: { ...lesson, id: newId() },
      record: {
        lesson: lesson.number,
        title,
        learnt,
        source: { ...lesson.source },
        proposes: changeInWords(change),
        change: asJson(change),
      },
      result: { lesson: lesson.number },
    }
  },
  async apply(tx, { source, change, ...lesson }, { programmeId, actor, now }) {
    await tx.lesson.create({
      data: {
        ...lesson,
        source: source as object,
        change: change as object,
        programmeId,
        proposedById: actor.personId,
        proposedByName: actor.name,
        proposedAt: now,
      },
    })
  },
})
