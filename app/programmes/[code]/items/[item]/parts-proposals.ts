import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { Parameter, ValueOf } from '@/shared/plan/parameter'
import { partsList, type ListedRow } from '@/shared/plan/parameters/parts-list'
import { partsOnBoard } from '@/shared/works/parts-on-board'
import {
  leadFinishesFromParts,
  leadHolesFromParts,
  lotsFromParts,
  surfaceJointsFromParts,
} from '@/shared/works/proposed-from-parts'
import type { FilledIn } from './filled-in'
import type { Asked } from './proposal-asked'
import { proposalsFor, type ValueProposal } from './value-proposal'

/** What follows from the programme's parts list and the parts it names; nothing where there is no list. */
export function partsProposals(view: ProgrammeView): ValueProposal[] {
  const { values, records } = view.state.facts
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
  return proposalsFor(view, proposed)
}

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
