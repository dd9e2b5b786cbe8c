import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { itemHolding } from '@/shared/catalogue/standard-plan'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { Parameter, ValueOf } from '@/shared/plan/parameter'
import { partsList, type ListedRow } from '@/shared/plan/parameters/parts-list'
import { valueDifference } from '@/shared/plan/value-difference'
import { partsOnBoard } from '@/shared/works/parts-on-board'
import {
  leadFinishesFromParts,
  leadHolesFromParts,
  lotsFromParts,
  surfaceJointsFromParts,
} from '@/shared/works/proposed-from-parts'
import type { FilledIn } from './filled-in'
import type { Asked } from './proposal-asked'

/** A value that follows from the parts list, and how it differs from the one that stands. */
export interface PartsProposal {
  readonly parameter: Parameter
  readonly item: string
  readonly value: unknown
  /** A line a difference; empty where none is left. */
  readonly differences: readonly string[]
}

/** What follows from the programme's parts list and the parts it names; nothing where there is no list. */
export function partsProposals({ state }: ProgrammeView): PartsProposal[] {
  const { values, records } = state.facts
  const list = values.get(partsList.key) as readonly ListedRow[] | undefined
  if (!list) return []
  const onBoard = partsOnBoard(list, records.parts)
  const now = <T>({ key }: Parameter<T>): T | undefined => values.get(key) as T | undefined
  const proposed: readonly (readonly [Parameter, unknown])[] = [
    [leadHoles, leadHolesFromParts(onBoard, now<readonly LeadHole[]>(leadHoles) ?? [])],
    [leadFinishes, leadFinishesFromParts(onBoard, now<readonly LeadFinish[]>(leadFinishes) ?? [])],
    [surfaceMountJoints, surfaceJointsFromParts(onBoard)],
    [lotsNeeded, lotsFromParts(onBoard, now<ValueOf<typeof lotsNeeded>>(lotsNeeded) ?? [])],
  ]
  return proposed.flatMap(([parameter, value]) => {
    const item = itemHolding.parameter(parameter.key)
    const planned = state.items.some(({ definition }) => definition.key === item?.key)
    if (!item || !planned || value === undefined || isEmpty(value)) return []
    const differences = valueDifference(parameter, values.get(parameter.key), value)
    return [{ parameter, item: item.key, value, differences }]
  })
}

const isEmpty = (value: unknown): boolean => Array.isArray(value) && value.length === 0

/** The value that the address asks to be filled in from the parts list; undefined where it does not, or nothing follows. */
export function filledInFromParts(view: ProgrammeView, { revise, from }: Asked): FilledIn | undefined {
  if (from !== 'parts' || revise === undefined) return undefined
  const found = partsProposals(view).find(({ parameter }) => parameter.key === revise)
  const revision = view.state.revisions.get(partsList.key)?.number
  return (
    found && {
      from: 'parts list',
      parameter: revise,
      value: found.value,
      reason: `From the parts list, revision ${revision ?? 1}, and the parts that it names.`,
    }
  )
}
