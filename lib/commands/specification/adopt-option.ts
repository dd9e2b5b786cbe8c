import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, reason, wholeNumber } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { currentValues } from '@/lib/commands/specification/current-values'
import { loadOpenStudy, studyNamed } from '@/lib/commands/specification/load-study'
import { standingAlternative } from '@/lib/commands/specification/standing-alternative'
import { writeRevisions } from '@/lib/commands/specification/write-revisions'
import { drawnCosts } from '@/shared/cost/drawn-costs'
import { answerOf, type ActionAnswer, type FirstAnswer } from '@/shared/gate/action-answer'
import { changesOf, itemsOf, limitsToState } from '@/shared/gate/option-study'
import { standing } from '@/shared/gate/study-revision'
import { findLimit, findParameter } from '@/shared/catalogue/standard-plan'
import { givenByAdoption } from '@/shared/plan/given-reasons'
import { governingRequirement, type Authority } from '@/shared/plan/requirement'
import { Refused } from '@/shared/refused'

/**
 * Adopts one alternative of a study: its values become revisions of their
 * items and its limits are stated, all at once and with the same reason. `seen`
 * holds the revision of each compared parameter that the person had before them
 * (0 for none): when another came between, the study has to be read again, for
 * it may give something else now. What it costs by then goes into the entry.
 */
export const adoptOption = defineCommand({
  name: 'adopt-option',
  input: z.strictObject({
    ...studyNamed,
    alternative: line('The alternative', 60),
    seen: z.record(z.string(), wholeNumber('The revision', 0, 1_000_000)),
    reason,
  }),
  load: async (tx, input, { programmeId }) => {
    const study = await loadOpenStudy(tx, programmeId, input)
    const alternative = standingAlternative(study.alternatives, input.alternative)
    const current = await currentValues(tx, programmeId)
    const today = new Map([...current].map(([parameter, { value }]) => [parameter, value]))
    const inForce = await tx.requirement.findMany({ where: { programmeId, withdrawnAt: null } })
    const actions = await tx.action.findMany({ where: { programmeId } })
    return {
      study,
      alternative,
      current,
      item: (await loadPlanItem(tx, programmeId, study.itemKey)).definition,
      changes: changesOf(alternative, today),
      limits: limitsToState(
        alternative,
        inForce.map((stated) => ({ ...stated, authority: stated.authority as Authority })),
      ),
      actions: actions.map((action) => ({
        ...action,
        answer: action.answer ? answerOf(action.answer as unknown as ActionAnswer | FirstAnswer) : null,
      })),
    }
  },
  subject: ({ item, changes, limits }) => ({ item, changes, limits }),
  decide(state, { alternative: name, seen, reason: why }, { newId }) {
    const { study, alternative, current, changes, limits, actions } = state
    const moved = Object.keys(alternative.values).find(
      (key) => (seen[key] ?? 0) !== (current.get(key)?.number ?? 0),
    )
    if (moved)
      throw new Refused(
        `${findParameter(moved)?.label ?? moved} was revised since you read the study, so that it may give something else now. Load the page again, read it, and then adopt.`,
      )
    const revisions = [...changes].map(([parameter, value]) => {
      const before = current.get(parameter)
      return { parameter, value, number: (before?.number ?? 0) + 1, before: before?.value ?? null }
    })
    const requirements = limits.map((stated) => ({ ...stated, id: newId() }))
    const given = givenByAdoption(study.number, name, why)
    const compared = standing(study.alternatives)
    const costs = drawnCosts(study.number, compared, actions)[compared.indexOf(alternative)]
    return {
      change: { id: study.id, name, why: given, adoptedWhy: why, revisions, requirements },
      record: {
        study: study.number,
        title: study.title,
        item: study.itemKey,
        items: [...itemsOf({ itemKey: study.itemKey, alternatives: [alternative] })],
        adopted: name,
        reason: why,
        revisions,
        requirements: requirements.map((stated) => ({
          ...stated,
          looserThanDefault: isLooser({ ...stated, lesson: null }),
        })),
        costs: (costs?.lines ?? []).map((line) => ({ ...line })),
        unknown: costs?.gaps.length ?? 0,
      },
    }
  },
  async apply(tx, { id, name, why, adoptedWhy, revisions, requirements }, { programmeId, actor, now }) {
    await tx.optionStudy.update({
      where: { id },
      data: { adopted: name, adoptedWhy, adoptedById: actor.personId, adoptedAt: now },
    })
    await writeRevisions(
      tx,
      revisions.map(({ parameter, number, value }) => ({ parameter, number, value, reason: why })),
      { programmeId, authorId: actor.personId, at: now },
    )
    await tx.requirement.createMany({
      data: requirements.map((stated) => ({
        ...stated,
        reason: why,
        programmeId,
        authorId: actor.personId,
        at: now,
      })),
    })
  },
})

function isLooser(stated: Parameters<typeof governingRequirement>[1][number]): boolean {
  const limit = findLimit(stated.limit)
  return limit ? governingRequirement(limit, [stated]).relaxed : false
}
