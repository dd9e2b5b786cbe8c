import { testLabel } from '@/shared/lot-tests/tests-asked'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import type { Facts } from '@/shared/rules/facts'
import type { InspectionStatus } from '@/shared/statistics/sampling/switching'
import { allSeries, type SampledLot } from './sampled-series'
import { planInWords } from './sampling-plan'
import { samplingSpecified } from './sampling-of-lot'
import { switchingRules } from './sampling-reads'

export type SeriesSeverity = InspectionStatus['severity']

/** One lot in its supplier's series: how it was inspected, what came of it, and what that did to the next. */
export interface SeriesStep {
  readonly lot: string
  /** The lot is none of this programme's. */
  readonly elsewhere: boolean
  readonly receivedOn: string
  readonly severity: SeriesSeverity
  readonly planMessage: string
  readonly tested: number
  readonly nonconforming: number
  /** Undefined while the sample has not decided. */
  readonly outcome: 'accepted' | 'accepted in the gap' | 'rejected' | undefined
  /** Why the lot after it is inspected otherwise, when it is. */
  readonly switched:
    | {
        readonly to: SeriesSeverity
        readonly because: string
        /** The lots that brought it about, oldest first. */
        readonly by: readonly string[]
      }
    | undefined
}

/** A supplier's lots of one part by one test, whichever programme they went to, oldest first, and how the next is inspected. */
export interface InspectionSeries {
  readonly supplier: string
  readonly part: string
  readonly method: string
  readonly label: string
  readonly steps: readonly SeriesStep[]
  readonly next: InspectionStatus
  /** The plan for a next lot as large as the last. */
  readonly nextPlanMessage: string
  readonly edition: string
}

/** Every series that a sampled test is asked of or was made on; empty while the sampling is not specified. */
export function inspectionSeries(facts: Facts): InspectionSeries[] {
  const inputs = samplingSpecified(facts)
  if (!inputs) return []
  const { edition } = switchingRules(inputs)
  return allSeries(inputs)
    .filter(({ begun }) => begun)
    .map(({ method: { key }, test, lots, next, nextPlan }) => {
      const { supplier, part } = lots.findLast(({ own }) => own)!.lot
      return {
        supplier,
        part,
        method: key,
        label: testLabel(TEST_METHODS[key].label, test),
        steps: lots.map((_, at) => stepOf(lots.slice(0, at + 1), lots[at + 1]?.inspection ?? next)),
        next,
        nextPlanMessage: nextPlan ? `${planInWords(nextPlan)}.` : 'No lot is taken.',
        edition,
      }
    })
}

function stepOf(upTo: readonly SampledLot[], after: InspectionStatus): SeriesStep {
  const { lot, own, inspection, plan, sample } = upTo[upTo.length - 1]!
  const from = inspection.severity
  return {
    lot: lot.code,
    elsewhere: !own,
    receivedOn: lot.receivedOn,
    severity: from,
    planMessage: planInWords(plan),
    tested: sample?.tested ?? 0,
    nonconforming: sample?.nonconforming ?? 0,
    outcome: sample?.outcome.decided,
    switched:
      after.severity === from
        ? undefined
        : { to: after.severity, because: after.because, by: behind(upTo, after.severity) },
  }
}

/** The lots that a switch rests on: those rejected for a stricter state, those accepted in a row for an easier one. */
function behind(upTo: readonly SampledLot[], to: SeriesSeverity): string[] {
  const { severity } = upTo[upTo.length - 1]!.inspection
  const start = upTo.findLastIndex(({ inspection }) => inspection.severity !== severity) + 1
  const run = upTo.slice(start).filter(({ sample }) => sample?.outcome.decided !== undefined)
  const rejected = (some: readonly SampledLot[]) =>
    some.filter(({ sample }) => sample?.outcome.decided === 'rejected')
  const [lots] = {
    tightened: [rejected(run.slice(-5))],
    discontinued: [rejected(run)],
    reduced: [run.slice(-10)],
    normal: [severity === 'tightened' ? run.slice(-5) : run.slice(-1)],
  }[to]
  return (lots ?? []).map(({ lot }) => lot.code)
}
