import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, line, programmeCode } from '@/lib/commands/inputs'
import { loadSource, takenOver, writeTakenOver } from '@/lib/commands/programme/take-over'
import { recordable } from '@/lib/commands/recordable'
import { openSubject } from '@/lib/commands/works/open-subject'
import { writeRevisions } from '@/lib/commands/specification/write-revisions'
import { loadCompanyPreferences, loadCompanyRules } from '@/lib/programme/company-rules'
import { lessonOf, withProgramme } from '@/lib/programme/lesson-row'
import { changeInWords } from '@/shared/lessons/lesson-change'
import { rulesAtOpening, valuesAtOpening } from '@/shared/company-rules/opening-rules'
import { openingChanges } from '@/shared/lessons/opening-changes'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { GIVEN_AT_OPENING } from '@/shared/plan/given-reasons'
import { STAGES } from '@/shared/plan/stage'
import {
  alloyFamily,
  annualVolume,
  ASKED_AT_OPENING,
  environment,
  productClass,
  serviceYears,
} from '@/shared/plan/parameters/programme'
import { Refused } from '@/shared/refused'
import { lessonName } from '@/shared/lessons/lesson'

/** A single value is given as it is kept. */
const schemaOf = <T>({ schema }: Parameter<T>) => schema as z.ZodType<T, T>

/**
 * Opens a programme on the standard plan, what lessons have added to it and what the company's rules and preferences
 * say; who opens it leads it.
 */
export const openProgramme = defineCommand({
  name: 'open-programme',
  input: z.strictObject({
    code: programmeCode,
    title: line('The title', 120),
    department,
    productClass: schemaOf(productClass),
    alloyFamily: schemaOf(alloyFamily),
    serviceYears: schemaOf(serviceYears),
    environment: schemaOf(environment),
    annualVolume: schemaOf(annualVolume),
    /** The code of a programme whose values, plan and limits it starts with. */
    from: programmeCode.nullable().default(null),
  }),
  load: async (tx, { code, from }, { now, actor }) => ({
    source: from === null ? null : await loadSource(tx, from, actor),
    existing: await tx.programme.findUnique({ where: { code }, select: { id: true } }),
    lessons: (
      await tx.lesson.findMany({
        where: {
          decision: 'accepted',
          decidedAt: { lte: now },
          OR: [{ retiredAt: null }, { retiredAt: { gt: now } }],
        },
        orderBy: [{ decidedAt: 'asc' }, { id: 'asc' }],
        ...withProgramme,
      })
    ).map(lessonOf),
    rules: await loadCompanyRules(tx, { withdrawnAt: null }),
    preferences: await loadCompanyPreferences(tx, { withdrawnAt: null }),
  }),
  decide({ existing, lessons, source, rules, preferences }, input, { programmeId, actor, now, newId }) {
    if (existing) {
      const message = `The code ${input.code} is taken by another programme. Choose another.`
      throw new Refused(message, { code: message })
    }
    const values = [
      input.productClass,
      input.alloyFamily,
      input.serviceYears,
      input.environment,
      input.annualVolume,
    ]
    const revisions = ASKED_AT_OPENING.map((parameter, index) => ({
      parameter: parameter.key,
      value: values[index] ?? null,
    }))
    const { code, title } = input
    const brought = openingChanges(lessons)
    const requirements = brought.requirements.map((requirement) => ({ ...requirement, id: newId() }))
    const taken = source && takenOver(source, new Set(ASKED_AT_OPENING.map(({ key }) => key)), newId)
    const companyRules = rulesAtOpening(rules).map((rule) => ({ ...rule, requirement: newId() }))
    const preferred = valuesAtOpening(
      preferences,
      new Set([...revisions, ...(taken?.values ?? [])].map(({ parameter }) => parameter)),
    )
    return {
      change: {
        code,
        title,
        department: input.department,
        revisions,
        items: brought.items,
        requirements,
        companyRules,
        preferred,
        taken,
        proposal: { proposedById: actor.personId, proposedByName: actor.name, proposedAt: now, agreed: null },
      },
      record: {
        programmeId,
        code,
        title,
        lead: actor.name,
        department: input.department,
        values: Object.fromEntries(revisions.map(({ parameter, value }) => [parameter, value])),
        plan: Object.fromEntries(
          STAGES.map((stage) => [
            stage,
            STANDARD_PLAN.filter((item) => item.stage === stage).map(({ key }) => key),
          ]),
        ),
        lessons: [
          ...brought.items.map(({ key, item, lesson }) => ({
            lesson: lessonName(lesson),
            from: { ...lesson },
            brings: changeInWords({ kind: 'item', item }),
            addedItem: key,
            ...item,
          })),
          ...requirements.map(({ id, limit, value, lesson, acceptedById, ...stated }) => ({
            lesson: lessonName(lesson),
            from: { ...lesson },
            brings: changeInWords({ kind: 'limit', limit, value }),
            requirement: id,
            limit,
            value,
            authorId: acceptedById,
            ...stated,
          })),
        ],
        companyRules,
        preferences: preferred,
        ...(taken && { takenOver: recordable(taken) }),
      },
      result: { code },
    }
  },
  async apply(
    tx,
    {
      code,
      title,
      department: own,
      revisions,
      items,
      requirements,
      companyRules,
      preferred,
      taken,
      proposal,
    },
    { programmeId, actor, now },
  ) {
    await openSubject(tx, { id: programmeId, kind: 'programme', code })
    await tx.programme.create({
      data: {
        id: programmeId,
        code,
        title,
        leadId: actor.personId,
        openedById: actor.personId,
        openedAt: now,
      },
    })
    await tx.membership.create({
      data: { programmeId, personId: actor.personId, department: own, since: now },
    })
    await tx.planItem.createMany({
      data: STANDARD_PLAN.map(({ key, stage }, position) => ({ programmeId, key, stage, position })),
    })
    await tx.planItem.createMany({
      data: items.map(({ key, item, lesson }, index) => ({
        programmeId,
        key,
        stage: item.stage,
        position: STANDARD_PLAN.length + index,
        added: item as object,
        lesson: lesson as object,
      })),
    })
    await tx.requirement.createMany({
      data: requirements.map(({ acceptedById, lesson, ...requirement }) => ({
        ...requirement,
        lesson: lesson as object,
        programmeId,
        authorId: acceptedById,
        at: now,
      })),
    })
    await tx.requirement.createMany({
      data: companyRules.map(({ rule, requirement, ...stated }) => ({
        ...stated,
        id: requirement,
        companyRule: rule,
        programmeId,
        at: now,
      })),
    })
    const first = [...preferred, ...revisions.map((given) => ({ ...given, reason: GIVEN_AT_OPENING }))]
    await writeRevisions(
      tx,
      first.map(({ parameter, value, reason }) => ({ parameter, number: 1, value, reason })),
      { programmeId, authorId: actor.personId, at: now },
    )
    if (taken) await writeTakenOver(tx, taken, { programmeId, proposal, actor, now, after: items.length })
  },
})
