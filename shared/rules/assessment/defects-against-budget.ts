import { type BudgetStatus, budgetStatus } from '@/shared/inspection/budget-status'
import { allowedDefectsPerMillion } from '@/shared/physics/joint-budget'
import { boardJoints } from '@/shared/plan/board-joints'
import { budgetConfidenceMin } from '@/shared/plan/limits/assessment-inspection'
import { defectFreeBoards, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { formatAgainst, formatEstimate, formatNumber, formatQuantity } from '@/shared/quantity/format'
import { defectRecord, type DefectRecord } from '@/shared/inspection/defect-record'
import {
  undetermined,
  verdictOn,
  type Judged,
  type Margin,
  type Part,
  type WorkingLine,
} from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { inspections } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { electricalTests } from '@/shared/rules/assembly-record-sources'
import { SEQUENTIAL_RATE_SOURCE } from '@/shared/statistics/intervals/sequential-rate'
import { defectBudgetGuard } from '@/shared/plan/limits/assessment-guards'
import { directionChanceMax } from '@/shared/plan/limits/assessment-evidence'
import { ratesByKind } from '@/shared/inspection/defect-summary'
import { defectsByComponent } from '@/shared/inspection/defects-by-component'

const SOURCES: Judged['sources'] = [
  SEQUENTIAL_RATE_SOURCE,
  { cite: 'Binomial board yield: budget per million = 10⁶ · (1 − Y^(1/N))', how: 'computed' },
]

export const defectsAgainstBudget = rule({
  id: 'defects-against-budget',
  title: 'Defective joints against the budget',
  why: 'Few defects among few joints prove little. The question is whether what was seen shows the rate the specification asks for, or how much more must be seen.',
  formula: 'upper bound of defective joints a million ≤ 10⁶ · (1 − Y^(1/N))',
  stage: 'assessment',
  version: 3,
  reads: {
    holes: leadHoles,
    surfaceMount: surfaceMountJoints,
    defectFree: defectFreeBoards,
    confidenceMin: budgetConfidenceMin,
    guard: defectBudgetGuard,
    chanceMax: directionChanceMax,
    inspections,
    tests: electricalTests,
  },
  judge({
    holes,
    surfaceMount,
    defectFree,
    confidenceMin,
    guard,
    chanceMax,
    inspections: looks,
    tests,
  }): Judged {
    const joints = boardJoints(holes, surfaceMount).total
    const budget = allowedDefectsPerMillion({ joints, defectFreeBoards: defectFree / 100 })
    const confidence = confidenceMin.value / 100
    const limit = `At most ${formatQuantity(budget, 'per million', 4)} (${formatQuantity(defectFree, '%', 6)} of boards with ${joints} joints leave soldering without a defect), shown with ${formatQuantity(confidenceMin.value, '%')} confidence (${governingName(confidenceMin)}).`
    const sources = [...SOURCES, sourceOf(confidenceMin)]
    if (!(confidence > 0 && confidence < 1))
      return undetermined(
        'The confidence asked for must lie between 0 and 100 %, both excluded.',
        ['a confidence below 100 %'],
        limit,
      )
    const record = defectRecord(looks, tests, joints)
    if (record.jointsSeen === 0)
      return {
        ...undetermined('No joint has been inspected yet.', ['inspections of assemblies'], limit),
        sources,
      }
    if (record.defective > record.jointsSeen)
      return {
        verdict: 'fails',
        measured: {
          defective: count(record.defective, 'joints'),
          seen: count(record.jointsSeen, 'joints'),
        },
        found: `${record.defective} defective joints are on record, but only ${record.jointsSeen} joints were seen.`,
        limit,
        working: [],
        sources,
        remedy: { message: 'Record the inspections of the assemblies that failed electrically too.' },
      }
    const state = budgetStatus(record, budget, confidence)
    return {
      ...judged(state, record, confidenceMin.value, guard.value / 100),
      limit,
      working: workingOf(state, record, joints, defectFree, confidence),
      sources,
      parts: partsOf(record, confidence),
      notes: [
        'The bound holds at every look, however often boards are counted as they come; one for a single planned look would be narrower, and wrong by the third or fourth look.',
        'A joint counts once, however many faults it shows and however often it was found; of several looks at one assembly the largest counts.',
        ...(record.unnamed > 0
          ? [`${record.unnamed} joints were found at fault electrically without being named; each counts.`]
          : []),
        ...componentNotes(record, holes, chanceMax.value / 100),
      ],
    }
  },
})

/** The component that stands out, when its defects are more than chance would give it. */
function componentNotes(record: DefectRecord, holes: readonly LeadHole[], telling: number): string[] {
  const { effect, components } = defectsByComponent(record, holes)
  const worst = components.find(({ component }) => component === effect?.worst)
  if (!effect || !worst || !effect.reliable || !(effect.pValue < telling)) return []
  return [
    `${worst.component} stands out: ${worst.defective} of ${worst.jointsSeen} joints, more than an even spread would give (chance ${formatNumber(effect.pValue, 2)}). Look there first.`,
  ]
}

function judged(
  state: BudgetStatus,
  record: DefectRecord,
  confidencePct: number,
  guardShare: number,
): Pick<Judged, 'verdict' | 'found' | 'margin' | 'measured' | 'remedy' | 'missing'> {
  const { status, upper, lower, perMillion, budgetPerMillion: budget, jointsStillToSee } = state
  const found = status === 'exceeded' ? lower : upper
  const margin: Margin = {
    found,
    limit: budget,
    unit: 'per million',
    direction: 'at most',
    guardBand: guardShare * budget,
  }
  const measured = {
    defective: count(record.defective, 'joints'),
    seen: count(record.jointsSeen, 'joints'),
    confidence: measure(confidencePct, '%'),
    status,
  }
  const printed = formatAgainst(found, budget, 'per million')
  const counted = `${record.defective} of ${record.jointsSeen} joints inspected were defective (${formatNumber(perMillion, 3)} per million)`
  if (status === 'shown')
    return {
      verdict: verdictOn(margin),
      found: `${counted}: with ${confidencePct} % confidence at most ${printed.found}. Shown.`,
      margin,
      measured,
    }
  if (status === 'exceeded')
    return {
      verdict: 'fails',
      found: `${counted}: with ${confidencePct} % confidence at least ${printed.found}. The budget is exceeded.`,
      margin,
      measured,
      remedy: {
        message:
          'Find the cause of the most frequent kinds and mend the process; joints made after that may be counted as a programme of their own.',
      },
    }
  const more = `${formatNumber(jointsStillToSee, 12)} more joints without a defect`
  return {
    verdict: 'undetermined',
    found: `${counted}: with ${confidencePct} % confidence at most ${printed.found}. Not shown yet: ${more} would show it.`,
    margin,
    measured,
    missing: [more],
    remedy: { message: `Inspect ${more}, or mend the cause first where defects recur.` },
  }
}

function workingOf(
  state: BudgetStatus,
  { defective, jointsSeen }: DefectRecord,
  joints: number,
  defectFree: number,
  confidence: number,
): WorkingLine[] {
  return [
    {
      label: 'Budget of defective joints',
      formula: '10⁶ · (1 − Y^(1/N))',
      numbers: `Y = ${formatQuantity(defectFree / 100, '1', 6)}, N = ${joints}`,
      result: formatQuantity(state.budgetPerMillion, 'per million', 5),
    },
    {
      label: 'Upper bound, good at every look',
      formula: 'the rate against which lower rates, mixed, have become 1/(1 − confidence) times likelier',
      numbers: `${defective} defective of ${jointsSeen}, confidence ${confidence}`,
      result: formatQuantity(state.upper, 'per million', 5),
    },
    {
      label: 'Joints to see in all, with no further defect',
      formula: 'the n at which the same bound comes down to the budget',
      numbers: `${defective} defective, ${formatQuantity(state.budgetPerMillion, 'per million', 5)}`,
      result: `${formatNumber(jointsSeen + state.jointsStillToSee, 12)} joints, ${formatNumber(state.jointsStillToSee, 12)} more`,
    },
  ]
}

/** Each kind with its rate and bounds; the kinds are information, the budget is for all together. */
const partsOf = (record: DefectRecord, confidence: number): Part[] =>
  ratesByKind(record, confidence).map(({ kind, joints, perMillion, interval }) => ({
    subject: kind,
    about: { kind },
    verdict: 'not applicable',
    measured: {
      joints: count(joints, 'joints'),
      lower: measure(interval.lower, 'per million'),
      upper: measure(interval.upper, 'per million'),
    },
    found: `${joints} joints, ${rateInWords(perMillion, interval)} with ${formatNumber(confidence * 100)} % confidence. The budget is for all kinds together.`,
  }))

/** "1235 per million, 812 to 1901" */
function rateInWords(perMillion: number, { lower, upper }: { lower: number; upper: number }): string {
  const rate = formatEstimate({ value: perMillion, lower, upper }, '1')
  return `${rate.value} per million, ${rate.lower} to ${rate.upper}`
}
