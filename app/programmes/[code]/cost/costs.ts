import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { LateRevision } from '@/lib/queries/late-revisions'
import { dateAtWorks } from '@/lib/settings/works'
import { changeCostOn, changeCostOverTime, type ChangeCost } from '@/shared/cost/change-cost'
import { costsByDecision, decisionCosts, type DecisionCost } from '@/shared/cost/decision-costs'
import { expectedAndActual, type ExpectedAndActual } from '@/shared/cost/expected-and-actual'
import { unitCosts, type UnitCosts } from '@/shared/cost/unit-costs'
import type { OptionStudy } from '@/shared/gate/option-study'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { STAGE_NAMES, STAGES, type Stage } from '@/shared/plan/stage'
import { qualityCostSummary, type QualityCostSummary } from '@/shared/cost/quality-cost-summary'
import type { RecordKindKey, RecordOf } from '@/shared/records/record-kinds'
import { assembliesMade } from '@/shared/records/soldering-work'

/** All that the cost page shows. */
export interface Costs {
  readonly boards: number
  readonly hourCost: number | undefined
  readonly summary: QualityCostSummary
  readonly unit: UnitCosts
  readonly decisions: readonly DecisionCost[]
  readonly named: ReturnType<typeof costsByDecision>
  readonly expected: ExpectedAndActual | undefined
  readonly steps: readonly ChangeCost[]
  readonly gates: readonly {
    readonly on: string
    readonly name: string
    readonly change: ChangeCost | undefined
  }[]
  readonly late: readonly { readonly revision: LateRevision; readonly change: ChangeCost | undefined }[]
}

export function costsOf(
  { state }: ProgrammeView,
  read: { readonly studies: readonly OptionStudy[]; readonly revisions: readonly LateRevision[] },
): Costs {
  const records = <K extends RecordKindKey>(kind: K) =>
    (state.facts.records.byKind.get(kind) ?? []) as readonly RecordOf<K>[]
  const [costs, rework, returns, runs, exposures] = [
    records('quality-cost'),
    records('rework'),
    records('field-return'),
    records('soldering-run'),
    records('field-exposure'),
  ]
  const { values, today } = state.facts
  const hourCost = values.get(workingHourCost.key) as number | undefined
  const summary = qualityCostSummary({ costs, rework, returns }, hourCost)
  const unit = unitCosts(values, { rework, returns })
  const boards = assembliesMade(runs)
  const lots = state.facts.records.lots.filter(({ kind }) => kind === 'bare board').length
  const facts = { runs, exposures }
  const gates = STAGES.flatMap((stage) => {
    const on = firstSigned(state, stage)
    return on ? [{ on, name: STAGE_NAMES[stage], change: changeCostOn(on, facts, unit) }] : []
  })
  const begun = [...state.revisions.values()].map(({ at }) => dateAtWorks(new Date(at))).sort()[0] ?? today
  return {
    boards,
    hourCost,
    summary,
    unit,
    decisions: decisionCosts(
      { actions: state.actions, studies: read.studies },
      { boards, lots },
      values,
      unit,
    ),
    named: costsByDecision(costs),
    expected: expectedAndActual(values, boards, { rework, returns }),
    steps: changeCostOverTime(facts, unit, { from: begun, to: today }),
    gates,
    late: read.revisions.map((revision) => ({
      revision,
      change: changeCostOn(dateAtWorks(new Date(revision.at)), facts, unit),
    })),
  }
}

/** The day on which quality first signed a gate: what was signed again later was decided then. */
const firstSigned = ({ gateSignatures }: ProgrammeView['state'], stage: Stage): string | undefined =>
  gateSignatures
    .filter((signature) => signature.stage === stage && signature.department === 'quality')
    .map(({ at }) => dateAtWorks(new Date(at)))
    .sort()[0]
