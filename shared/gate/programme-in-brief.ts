import type { Amount } from '@/shared/cost/amount'
import { qualityCostSummary } from '@/shared/cost/quality-cost-summary'
import { defectSummary, type DefectSummary } from '@/shared/inspection/defect-summary'
import { boardJoints } from '@/shared/plan/board-joints'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { STAGES, type Stage } from '@/shared/plan/stage'
import { daysBetween } from '@/shared/quantity/calendar'
import { recordsOfKind } from '@/shared/records/records-of-kind'
import { defectsAgainstBudget } from '@/shared/rules/assessment/defects-against-budget'
import type { Facts } from '@/shared/rules/facts'
import type { Finding, Verdict } from '@/shared/rules/finding'
import { inputsOf } from '@/shared/rules/inputs-of'
import { optional } from '@/shared/rules/rule'
import { wantsAnswer } from './action-status'
import { GATE_STANDINGS } from './gate'
import type { Judgement } from './judgement'
import type { ProgrammeState } from './programme-state'
import { stageAtWork } from './stage-at-work'

/** A programme in a row beside others. */
export interface ProgrammeInBrief {
  readonly code: string
  readonly title: string
  readonly stage: Stage
  readonly openGates: number
  /** Days since the gate before was opened, or since the programme was. */
  readonly daysInStage: number
  readonly overdueActions: number
  readonly counts: Readonly<Record<Verdict, number>>
  readonly defects: DefectSummary
  /** Whether the inspections show the defect budget of its joints. */
  readonly budget: Finding | undefined
  readonly qualityCost: Amount
}

/** What a comparison of programmes shows of one, on a day; `openedOn` is 'YYYY-MM-DD'. */
export function programmeInBrief(
  state: ProgrammeState,
  judgement: Judgement,
  openedOn: string,
): ProgrammeInBrief {
  const { programme, facts, actions } = state
  const { records, today } = facts
  const stage = stageAtWork(judgement)
  return {
    code: programme.code,
    title: programme.title,
    stage,
    openGates: judgement.gates.filter(({ status }) => GATE_STANDINGS[status].isOpen).length,
    daysInStage: daysBetween(stageBegan(judgement, stage) ?? openedOn, today),
    overdueActions: actions.filter((action) => wantsAnswer(action) && action.dueOn < today).length,
    counts: countsOf([...judgement.findings.values()]),
    defects: defectSummary(records.inspections, {
      tests: recordsOfKind(records, 'electrical-test'),
      ...jointsOnBoard(facts),
    }),
    budget: judgement.findings.get(defectsAgainstBudget.id),
    qualityCost: qualityCostSummary(
      {
        costs: recordsOfKind(records, 'quality-cost'),
        rework: recordsOfKind(records, 'rework'),
        returns: recordsOfKind(records, 'field-return'),
      },
      numberIn(facts.values.get(workingHourCost.key)),
    ).sum,
  }
}

/** The date on which the gate before a stage was opened; undefined for the first stage. */
function stageBegan({ gates }: Judgement, stage: Stage): string | undefined {
  const before = gates.find((gate) => gate.stage === STAGES[STAGES.indexOf(stage) - 1])
  const opened = before?.signatures.find(({ department }) => department === 'quality')?.signature
  return opened?.at.slice(0, 10)
}

function countsOf(findings: readonly Finding[]): Record<Verdict, number> {
  const counts: Record<Verdict, number> = {
    meets: 0,
    marginal: 0,
    fails: 0,
    undetermined: 0,
    'not applicable': 0,
  }
  for (const { verdict } of findings) counts[verdict] += 1
  return counts
}

const numberIn = (value: unknown): number | undefined => (typeof value === 'number' ? value : undefined)
/** How many joints a board has, where the specification says. */
function jointsOnBoard(facts: Facts): { readonly jointsOnBoard?: number } {
  const inputs = inputsOf({ holes: leadHoles, surfaceMount: optional(surfaceMountJoints) }, facts)
  return inputs ? { jointsOnBoard: boardJoints(inputs.holes, inputs.surfaceMount).total } : {}
}
