import type { Lot } from '@/shared/records/lot'
import { deliveries, partKey } from '@/shared/records/lot-identity'
import type { RecordOf } from '@/shared/records/record-kinds'
import { ACCEPTANCE_QUALITY_LIMITS } from '@/shared/statistics/sampling/acceptance-quality-limit'
import {
  inspectionAfter,
  nextInspection,
  type InspectedLot,
  type InspectionStatus,
} from '@/shared/statistics/sampling/switching'
import type { SwitchingRules } from '@/shared/statistics/sampling/switching-rules'
import { sampleOf, testedBy, type LotSampleFound, type TestedLot } from './lot-sample'
import { lookAtNormality, type LookAtNormality } from './look-at-normality'
import { memory } from '@/shared/memo'
import type { SampledMethod } from './sampled-method'
import {
  acceptanceNumber,
  firstAccepts,
  planForLot,
  tabledPlan,
  type SamplingPlan,
  type SamplingSettings,
} from './sampling-plan'
import { settingsFor, type NeededPart } from './part-sampling'
import { conditionsFor, type StatedCondition } from './stated-conditions'
import { demandInputs, type SortedTests, type TestDemands } from './test-status'

export type SupplierAction = RecordOf<'supplier-action'>

/** Everything that the sampling of lots rests on beside the lots. */
export interface SamplingContext {
  /** The programme's own, where a part states nothing else. */
  readonly settings: SamplingSettings
  readonly needed: readonly NeededPart[]
  readonly demands: TestDemands
  readonly switching: SwitchingRules
  readonly supplierActions: readonly SupplierAction[]
  /** Readings with a smaller p value for being normal are counted, not measured. A fraction. */
  readonly normalityMin: number
}

/** One lot under one method and one stated condition: the plan its history asks for, and what its sample says. */
export interface SampledLot {
  readonly lot: Lot
  /** Of those stated for the lot; undefined where conditions do not bear on the method, or none is stated. */
  readonly condition: StatedCondition | undefined
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
/** A series of one supplier's lots of one part under one stated condition, and how the next one is to be inspected. */
export interface Series {
  readonly condition: StatedCondition | undefined
  /** All conditions stated for its lots. */
  readonly stated: readonly StatedCondition[]
  readonly settings: SamplingSettings
  readonly lots: readonly SampledLot[]
  readonly next: InspectionStatus
}

/**
 * Goes through every supplier's lots of every part in the order of receipt, once
 * for each condition stated for them: each is a demand with a history of its own. A
 * lot whose sample has decided counts for the switching rules; one that is not
 * yet decided leaves the inspection as it was.
 * Source: MIL-STD-105E 4.7 and 4.8, by the edition in `switching`.
 */
export function seriesOf(
  lots: readonly Lot[],
  method: SampledMethod,
  limit: number,
  context: SamplingContext,
): readonly Series[] {
  const { settings, needed, demands, switching, supplierActions, normalityMin } = context
  const { scheme, level, limit: aql, reducedWanted, zeroAcceptance } = settings
  const inputs = [
    ...[method, limit, scheme, level, aql, reducedWanted, zeroAcceptance.fraction, zeroAcceptance.confidence],
    ...[needed, switching, supplierActions, normalityMin],
    ...demandInputs(demands),
  ]
  return knownSeries(lots, inputs, () =>
    [...deliveries(lots).values()].flatMap((series) =>
      demandsOn(series, method, context).map((demand) =>
        goThrough(series, { method, limit, context, demand }),
      ),
    ),
  )
}
/** Several rules ask for the same series: enough is kept for every method under two specifications. */
const knownSeries = memory<readonly Lot[], readonly Series[]>(12)

/** What one series of lots is tried under: one stated condition and the part's own sampling. */
type Demand = Pick<Series, 'condition' | 'stated' | 'settings'>

function demandsOn(
  series: readonly Lot[],
  { key }: SampledMethod,
  { settings, needed, demands }: SamplingContext,
): readonly Demand[] {
  const [lot] = series
  if (!lot) return []
  const own = settingsFor(settings, needed, lot, key)
  const stated = conditionsFor(demands.specified, key, lot)
  return stated.length === 0
    ? [{ condition: undefined, stated, settings: own }]
    : stated.map((condition) => ({ condition, stated, settings: own }))
}

interface Asked {
  readonly method: SampledMethod
  readonly limit: number
  readonly context: SamplingContext
  readonly demand: Demand
}

function goThrough(series: readonly Lot[], { method, limit, context, demand }: Asked): Series {
  let inspection = inspectionAfter([], context.switching)
  const { condition, settings } = demand
  const sampled: SampledLot[] = []
  let since = ''
  for (const lot of series) {
    inspection = afterActions(inspection, lot, { since, until: lot.receivedOn }, context)
    since = lot.receivedOn
    const tested = testedBy(lot, method, limit, context.demands, condition)
    const { plan, look } = planAfterLook(inspection, lot, { method, tested, settings, context })
    const sample = sampleOf(tested, method, limit, plan)
    sampled.push({
      lot,
      condition,
      settings,
      inspection,
      plan,
      tests: tested.tests,
      sample,
      ...(look && { look }),
    })
    if (sample?.outcome.decided === undefined) continue
    inspection = nextInspection(inspection, eventOf(sample, plan, settings), context.switching)
  }
  const last = series[series.length - 1]
  const next = last ? afterActions(inspection, last, { since, until: '9999-12-31' }, context) : inspection
  return { ...demand, lots: sampled, next }
}

/** Supplier actions accepted after `since` and up to `until`. */
function afterActions(
  inspection: InspectionStatus,
  lot: Lot,
  { since, until }: { readonly since: string; readonly until: string },
  { supplierActions, switching }: SamplingContext,
): InspectionStatus {
  if (inspection.severity !== 'discontinued') return inspection
  const acted = supplierActions.some(
    (action) =>
      partKey(action.part) === partKey(lot.part) &&
      partKey(action.supplier) === partKey(lot.supplier) &&
      since <= action.acceptedOn &&
      action.acceptedOn <= until,
  )
  return acted ? nextInspection(inspection, { kind: 'corrective action accepted' }, switching) : inspection
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
    context,
  }: {
    readonly method: SampledMethod
    readonly tested: TestedLot
    readonly settings: SamplingSettings
    readonly context: SamplingContext
  },
): { readonly plan: SamplingPlan; readonly look?: LookAtNormality } {
  const plan = planUnder(inspection, lot, method, settings)
  if (plan.kind !== 'variables' || !tested.tally) return { plan }
  const look = lookAtNormality(tested.tally, context.normalityMin)
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
