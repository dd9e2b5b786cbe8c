import { TEST_METHODS } from '@/shared/methods/test-methods'
import type { Facts } from '@/shared/rules/facts'
import type { InspectionStatus } from '@/shared/statistics/sampling/switching'
import { askedOf, sampledMethods } from './asked-methods'
import { seriesOf, type SampledLot } from './lot-sampling'
import { labelOf } from './test-asked'
import { planForLot, planInWords } from './sampling-plan'
import { samplingSpecified } from './sampling-of-lot'
import { contextFrom } from './sampling-reads'

export type SeriesSeverity = InspectionStatus['severity']

/** One lot in its supplier's series: how it was inspected, what came of it, and what that did to the next. */
export interface SeriesStep {
  readonly lot: string
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

/** A supplier's lots of one part by one test, oldest first, and how the next is inspected. */
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
  const context = contextFrom(inputs)
  const isAsked = askedOf(inputs.needed)
  return sampledMethods(inputs).flatMap(({ method, limit }) =>
    seriesOf(inputs.lots, method, limit, context)
      .filter(({ lots }) => lots.some(({ lot, sample }) => sample !== undefined || isAsked(lot, method.key)))
      .map(({ lots, next, condition, stated, settings }) => {
        const { lot } = lots[lots.length - 1]!
        const inUse = next.severity === 'discontinued' ? 'tightened' : next.severity
        const plan = planForLot(lot.quantity, inUse, settings, { measured: method.fitsVariables })
        return {
          supplier: lot.supplier,
          part: lot.part,
          method: method.key,
          label: labelOf(TEST_METHODS[method.key].label, condition, stated),
          steps: lots.map((_, at) => stepOf(lots.slice(0, at + 1), lots[at + 1]?.inspection ?? next)),
          next,
          nextPlanMessage: next.severity === 'discontinued' ? 'No lot is taken.' : `${planInWords(plan)}.`,
          edition: context.switching.edition,
        }
      }),
  )
}

function stepOf(upTo: readonly SampledLot[], after: InspectionStatus): SeriesStep {
  const { lot, inspection, plan, sample } = upTo[upTo.length - 1]!
  const from = inspection.severity
  return {
    lot: lot.code,
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
