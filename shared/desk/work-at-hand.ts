import { findParameter, findRule } from '@/shared/catalogue/standard-plan'
import type { ItemState, OpenPoint } from '@/shared/gate/item-status'
import type { Judgement } from '@/shared/gate/judgement'
import type { Department } from '@/shared/plan/department'
import { isLater } from '@/shared/plan/stage'
import type { DeskEntry } from './desk-entry'
import { counted } from '@/shared/quantity/counted'
import { stageAtWork } from '@/shared/gate/stage-at-work'

/**
 * What a department can do about its items now: values and evidence of the stage at work, findings that no record
 * shows yet once the values are there, and whatever fails, in any stage.
 */
export function workAtHand(department: Department, judgement: Judgement): DeskEntry[] {
  const now = stageAtWork(judgement)
  const failing = new Set<string>()
  return judgement.items.flatMap((state) => {
    const failures = failuresOf(department, state, judgement, failing)
    return isLater(state.item.definition.stage, now)
      ? failures
      : [
          ...valuesToSpecify(department, state),
          ...failures,
          ...toShow(department, state, judgement),
          ...evidenceToAttach(department, state),
        ]
  })
}

/** How many values of later stages the department has still to specify; they can wait for their stage. */
export function valuesForLater(department: Department, judgement: Judgement): number {
  const now = stageAtWork(judgement)
  return judgement.items
    .filter(({ item }) => isLater(item.definition.stage, now))
    .reduce((count, state) => count + ownValues(department, state).length, 0)
}

const ofKind = ({ openPoints }: ItemState, kind: OpenPoint['kind']): OpenPoint[] =>
  openPoints.filter((point) => point.kind === kind)

const ownValues = (department: Department, state: ItemState): string[] =>
  ofKind(state, 'value').flatMap(({ target }) => {
    const parameter = findParameter(target)
    return parameter?.owner === department ? [parameter.label] : []
  })

const itemEntry = (
  department: Department,
  { item: { definition } }: ItemState,
  about: Pick<DeskEntry, 'verb' | 'message'> & Partial<DeskEntry>,
): DeskEntry => ({
  bearing: 'own work',
  department,
  dueOn: null,
  place: { kind: 'item', item: definition.key },
  ...about,
})

function valuesToSpecify(department: Department, state: ItemState): DeskEntry[] {
  const labels = ownValues(department, state)
  if (labels.length === 0) return []
  const message = `${state.item.definition.title}: ${counted(labels.length, 'value', 'values')}`
  return [itemEntry(department, state, { verb: 'specify', message, several: labels })]
}

/** A finding that two items share is told once. */
function failuresOf(
  department: Department,
  state: ItemState,
  { findings }: Judgement,
  told: Set<string>,
): DeskEntry[] {
  if (state.item.definition.owner !== department) return []
  return ofKind(state, 'finding').flatMap(({ target }) => {
    const finding = findings.get(target)
    if (finding?.verdict !== 'fails' || told.has(target)) return []
    told.add(target)
    return itemEntry(department, state, {
      verb: 'mend',
      message: `${findRule(target)?.title ?? target}: ${finding.found}`,
      place: { kind: 'finding', rule: target },
    })
  })
}

/** Findings that wait for records or other departments; while own values are missing those come first. */
function toShow(department: Department, state: ItemState, { findings }: Judgement): DeskEntry[] {
  if (state.item.definition.owner !== department || ofKind(state, 'value').length > 0) return []
  const undetermined = ofKind(state, 'finding').filter(
    ({ target }) => findings.get(target)?.verdict !== 'fails',
  )
  if (undetermined.length === 0) return []
  const titles = undetermined.map(({ target }) => findRule(target)?.title ?? target)
  const message = `${state.item.definition.title}: ${counted(titles.length, 'finding has', 'findings have')} nothing to rest on yet`
  return [itemEntry(department, state, { verb: 'show', message, several: titles })]
}

function evidenceToAttach(department: Department, state: ItemState): DeskEntry[] {
  const { definition } = state.item
  const missing = ofKind(state, 'evidence')
  if (definition.owner !== department || missing.length === 0) return []
  const labels = missing.map(
    ({ target }) => definition.evidence.find(({ kind }) => kind === target)?.label ?? target,
  )
  return [
    itemEntry(department, state, {
      verb: 'attach',
      message: `${definition.title}: evidence`,
      several: labels,
      place: { kind: 'item', item: definition.key, part: 'evidence' },
    }),
  ]
}
