import { countingKey, type SortedTests } from '@/shared/lot-tests/counted-tests'
import { methodsInUse, type SampledLimits, type SampledMethod } from '@/shared/lot-tests/sampled-methods'
import { askedOf, testsAsked, type TestAsked } from '@/shared/lot-tests/tests-asked'
import { memory } from '@/shared/memo'
import { fractionOf } from '@/shared/plan/limit-fraction'
import type { Lot } from '@/shared/records/lot'
import { deliveries, partKey } from '@/shared/records/lot-identity'
import { ACCEPTANCE_QUALITY_LIMITS } from '@/shared/statistics/sampling/acceptance-quality-limit'
import {
  inspectionAfter,
  nextInspection,
  type InspectedLot,
  type InspectionStatus,
} from '@/shared/statistics/sampling/switching'
import { sampleOf, testedBy, type LotSampleFound, type TestedLot } from './lot-sample'
import { lookAtNormality, type LookAtNormality } from './look-at-normality'
import {
  acceptanceNumber,
  firstAccepts,
  planForLot,
  tabledPlan,
  type SamplingPlan,
  type SamplingSettings,
} from './sampling-plan'
import { settingsFor, switchingRules, type SamplingInputs } from './sampling-reads'

/** One lot under one test: the plan its history asks for, and what its sample says. */
export interface SampledLot {
  readonly lot: Lot
  /** The programme's own; another delivery of the same supplier and part is in the series for what it says of the next. */
  readonly own: boolean
  readonly test: TestAsked
  /** The plan of the evaluation asks this test of the lot's part. */
  readonly asked: boolean
  /** How its part is sampled. */
  readonly settings: SamplingSettings
  /** As the history before this lot left it. */
  readonly inspection: InspectionStatus
  readonly plan: SamplingPlan
  readonly tests: SortedTests
  /** Undefined while no test of the lot counts. */
  readonly sample: LotSampleFound | undefined
  /** Before a variables plan; undefined where none was to be used, or nothing is measured yet. */
  readonly look?: LookAtNormality
}

/** A series of one supplier's lots of one part under one test, and how the next one is to be inspected. */
export interface Series {
  readonly method: SampledMethod
  readonly test: TestAsked
  /** Oldest first; once it has begun, at least one of them is the programme's own. */
  readonly lots: readonly SampledLot[]
  /** A lot of the programme was tested, or is asked to be. */
  readonly begun: boolean
  readonly next: InspectionStatus
  /** For a next lot as large as the last; undefined where none is taken. */
  readonly nextPlan: SamplingPlan | undefined
}

/** Every series of lots by every sampled method that is asked for or was used. */
export const allSeries = (inputs: SamplingInputs & SampledLimits): Series[] =>
  methodsInUse(inputs).flatMap((method) => seriesOf(method, method.limitIn(inputs), inputs))

/**
 * Goes through every supplier's lots of every part in the order of receipt, whichever programme they went to, once
 * for each condition stated for them: each is a demand with a history of its own. A
 * lot whose sample has decided counts for the switching rules; one that is not
 * yet decided leaves the inspection as it was.
 * Source: MIL-STD-105E 4.7 and 4.8, by the edition chosen.
 */
export const seriesOf = (method: SampledMethod, limit: number, inputs: SamplingInputs): readonly Series[] =>
  knownSeries(inputs.lots, [method, limit, ...samplingKey(inputs)], () =>
    [...deliveries([...inputs.lots, ...inputs.deliveries]).values()].flatMap((lots) =>
      lots[0] === undefined
        ? []
        : testsAsked(lots[0], method.key, inputs).map((test) =>
            goThrough(lots, lots[0]!, { method, test, limit, inputs }),
          ),
    ),
  )
/** Several rules ask for the same series: enough is kept for every method under two specifications. */
const knownSeries = memory<readonly Lot[], readonly Series[]>(12)

/** All that decides how lots are sampled and whether their tests count, for the memory to compare. */
const samplingKey = (inputs: SamplingInputs): readonly unknown[] => [
  ...[
    inputs.deliveries,
    inputs.scheme,
    inputs.level,
    inputs.aql,
    inputs.reducedWanted,
    inputs.edition,
    inputs.needed,
  ],
  ...[inputs.zeroQuality.value, inputs.zeroConfidence.value, inputs.supplierActions, inputs.normality.value],
  ...countingKey(inputs),
]

interface Tested {
  readonly method: SampledMethod
  readonly test: TestAsked
  readonly limit: number
  readonly inputs: SamplingInputs
}

function goThrough(lots: readonly Lot[], first: Lot, { method, test, limit, inputs }: Tested): Series {
  const rules = switchingRules(inputs)
  const settings = settingsFor(first, method.key, inputs)
  const asked = askedOf(inputs.needed)(first, method.key)
  const sampled: SampledLot[] = []
  let inspection = inspectionAfter([], rules)
  let since = ''
  const others = new Set(inputs.deliveries)
  for (const lot of lots) {
    inspection = afterActions(inspection, lot, { since, until: lot.receivedOn }, inputs)
    since = lot.receivedOn
    const tested = testedBy(lot, method, limit, inputs, test.condition)
    const { plan, look } = planAfterLook(inspection, lot, { method, tested, settings, inputs })
    const sample = sampleOf(tested, method, limit, plan)
    const { tests } = tested
    sampled.push({
      lot,
      own: !others.has(lot),
      test,
      asked,
      settings,
      inspection,
      plan,
      tests,
      sample,
      ...(look && { look }),
    })
    if (sample?.outcome.decided === undefined) continue
    inspection = nextInspection(inspection, eventOf(sample, plan, settings), rules)
  }
  const last = lots.at(-1) ?? first
  const next = afterActions(inspection, last, { since, until: '9999-12-31' }, inputs)
  return {
    method,
    test,
    lots: sampled,
    begun: sampled.some(({ own, sample }) => own && (asked || sample !== undefined)),
    next,
    nextPlan: next.severity === 'discontinued' ? undefined : planUnder(next, last, method, settings),
  }
}

/** Supplier actions accepted after `since` and up to `until`. */
function afterActions(
  inspection: InspectionStatus,
  lot: Lot,
  { since, until }: { readonly since: string; readonly until: string },
  inputs: SamplingInputs,
): InspectionStatus {
  if (inspection.severity !== 'discontinued') return inspection
  const acted = inputs.supplierActions.some(
    (action) =>
      partKey(action.part) === partKey(lot.part) &&
      partKey(action.supplier) === partKey(lot.supplier) &&
      since <= action.acceptedOn &&
      action.acceptedOn <= until,
  )
  return acted
    ? nextInspection(inspection, { kind: 'corrective action accepted' }, switchingRules(inputs))
    : inspection
}

/** A discontinued series is looked at as tightened, so that its lots still have a plan to be read by. */
function planUnder(
  { severity }: InspectionStatus,
  lot: Lot,
  method: SampledMethod,
  settings: SamplingSettings,
): SamplingPlan {
  const inUse = severity === 'discontinued' ? 'tightened' : severity
  return planForLot(lot.quantity, inUse, settings, { measured: method.fitsVariables })
}

/** A variables plan is for normal readings: others are sampled by counting. */
function planAfterLook(
  inspection: InspectionStatus,
  lot: Lot,
  {
    method,
    tested,
    settings,
    inputs,
  }: {
    readonly method: SampledMethod
    readonly tested: TestedLot
    readonly settings: SamplingSettings
    readonly inputs: SamplingInputs
  },
): { readonly plan: SamplingPlan; readonly look?: LookAtNormality } {
  const plan = planUnder(inspection, lot, method, settings)
  if (plan.kind !== 'variables' || !tested.tally) return { plan }
  const look = lookAtNormality(tested.tally, fractionOf(inputs.normality))
  if (!look.skewed) return { plan, look }
  return { plan: planUnder(inspection, lot, method, { ...settings, scheme: 'single' }), look }
}

function eventOf(
  { outcome, nonconforming, nonconformingInFirst }: LotSampleFound,
  plan: SamplingPlan,
  settings: SamplingSettings,
): InspectedLot {
  if (outcome.decided === undefined) throw new RangeError('A sample that has not decided is no event.')
  const base = { kind: 'lot', outcome: outcome.decided, mayReduce: settings.reducedWanted } as const
  if (plan.kind === 'variables') return base
  if (plan.kind === 'double') return { ...base, acceptedOnFirst: firstAccepts(plan, nonconformingInFirst) }
  const counted = { ...base, acceptanceNumber: acceptanceNumber(plan) }
  return plan.kind === 'single'
    ? { ...counted, passesOneStepTighter: passesOneStepTighter(plan, settings, nonconforming) }
    : counted
}

/** Whether the same count would pass at the next tighter limit: for the switching score. */
function passesOneStepTighter(
  plan: Extract<SamplingPlan, { kind: 'single' }>,
  { limit }: SamplingSettings,
  nonconforming: number,
): boolean {
  const tighter = ACCEPTANCE_QUALITY_LIMITS[ACCEPTANCE_QUALITY_LIMITS.indexOf(limit) - 1]
  return tighter !== undefined && nonconforming <= tabledPlan(plan.letter, tighter, 'normal').accept
}
