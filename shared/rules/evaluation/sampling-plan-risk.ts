import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { published } from '@/shared/sources/provenance'
import { limitingQualityMax } from '@/shared/plan/limits/evaluation-sampling'
import { samplingRiskGuard } from '@/shared/plan/limits/evaluation-guards'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName, aboutLot } from '@/shared/records/lot-identity'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { rule } from '@/shared/rules/rule'
import { INSPECTION_LEVELS } from '@/shared/statistics/sampling/code-letters'
import type { Severity } from '@/shared/statistics/sampling/single-plan'
import { askedOf, sampledLimits, sampledMethods } from '@/shared/sampling/asked-methods'
import { seriesOf } from '@/shared/sampling/lot-sampling'
import { planRisk, riskInWords } from '@/shared/sampling/plan-risk'
import {
  planForLot,
  planInWords,
  type SamplingPlan,
  type SamplingSettings,
  planMeasured,
} from '@/shared/sampling/sampling-plan'
import { tablesNote } from '@/shared/sampling/sampling-sources'
import { contextFrom, samplingReads } from '@/shared/sampling/sampling-reads'
import { worstPart, spokenByWorst } from '@/shared/rules/worst-part'
import { sameValue } from '@/shared/plan/same-value'

const SOURCE = published(
  'Operating curve of a sampling plan, MIL-STD-105E tables X; acceptance of one time in ten',
)

export const samplingPlanRisk = rule({
  id: 'sampling-plan-risk',
  title: 'Consumer’s risk of the sampling plan',
  why: 'An acceptable quality level says what is nearly always accepted. What protects the boards is the other end of the curve: how bad a lot may be and still pass.',
  formula:
    'P(accept) = P(nonconforming pieces in the sample ≤ acceptance number) at the quality that must not pass, ≤ risk allowed',
  stage: 'evaluation',
  version: 2,
  reads: { ...samplingReads, ...sampledLimits, max: limitingQualityMax, guard: samplingRiskGuard },
  judge(inputs): Judged {
    const { max } = inputs
    const limit = `a lot accepted one time in ten holds at most ${formatQuantity(max.value, '%')} nonconforming pieces (${governingName(max)})`
    const context = contextFrom(inputs)
    const isAsked = askedOf(inputs.needed)
    const planned = sampledMethods(inputs).flatMap(({ method, limit: value }) =>
      seriesOf(inputs.lots, method, value, context)
        .flatMap(({ lots }) => lots)
        .filter(({ lot }) => isUsable(lot) && isAsked(lot, method.key))
        .map(({ lot, plan }) => ({ lot, plan, message: planInWords(plan), measured: method.fitsVariables })),
    )
    const distinct = planned.filter(
      (one, at) =>
        !planned.slice(0, at).some((other) => other.lot === one.lot && sameValue(other.plan, one.plan)),
    )
    if (distinct.length === 0) {
      return undetermined(
        'No lot is recorded yet that the plan would sample.',
        ['a lot of a part to be sampled'],
        limit,
      )
    }
    const asked = { maxPct: max.value, guardShare: inputs.guard.value / 100, settings: context.settings }
    const judged = distinct.map((one) => ({ ...one, part: partOf(one, asked) }))
    const parts = judged.map(({ part }) => part)
    const worst = worstPart(parts)
    const speaker = judged.find(({ part }) => part === worst)!
    return {
      ...spokenByWorst(parts),
      limit,
      working: [
        { label: 'Plan', result: speaker.message },
        {
          label: 'Operating curve',
          formula:
            'P(accept) = P(nonconforming pieces in the sample ≤ acceptance number), read at 0.95 and at 0.10',
          result: riskInWords(speaker.plan),
        },
      ],
      sources: [SOURCE, sourceOf(max)],
      notes: tablesNote(inputs),
    }
  },
})

interface Planned {
  readonly lot: Lot
  readonly plan: SamplingPlan
  /** The plan in words. */
  readonly message: string
  readonly measured: boolean
}

/** The most nonconforming pieces that may pass one time in ten, and how the programme samples. */
interface Asked {
  readonly maxPct: number
  readonly guardShare: number
  readonly settings: SamplingSettings
}

function partOf({ lot, plan, message, measured }: Planned, asked: Asked): Part {
  const common = { subject: lotName(lot), about: aboutLot(lot), measured: planMeasured(plan) }
  if (plan.kind !== 'double' && plan.everyUnit) {
    return { ...common, verdict: 'meets', found: `${message}: nothing is left to chance.` }
  }
  const margin = marginOf(plan, asked)
  const verdict = verdictOn(margin)
  const pair = formatAgainst(margin.found, asked.maxPct, '%')
  return {
    ...common,
    verdict,
    found: `${message}; with ${pair.found} nonconforming it still passes one time in ten.`,
    margin,
    remedy: verdict === 'meets' ? undefined : betterLevel(lot, plan, { ...asked, measured }),
  }
}

const marginOf = (plan: SamplingPlan, { maxPct, guardShare }: Omit<Asked, 'settings'>): Margin => ({
  found: planRisk(plan).oneInTen * 100,
  limit: maxPct,
  unit: '%',
  direction: 'at most',
  guardBand: guardShare * maxPct,
})

/** The least inspection level at which the same scheme would meet. */
function betterLevel(lot: Lot, plan: SamplingPlan, asked: Asked & { readonly measured: boolean }) {
  if (plan.kind === 'zero-acceptance') {
    return {
      message: 'Ask the zero-acceptance plan for a smaller share of nonconforming pieces or more confidence.',
    }
  }
  const { settings, measured } = asked
  const severity: Severity = plan.severity
  const level = INSPECTION_LEVELS.slice(INSPECTION_LEVELS.indexOf(settings.level) + 1).find((candidate) => {
    const better = planForLot(lot.quantity, severity, { ...settings, level: candidate }, { measured })
    return (better.kind !== 'double' && better.everyUnit) || verdictOn(marginOf(better, asked)) === 'meets'
  })
  if (level === undefined) return { message: 'No level of this scheme does: use a zero-acceptance plan.' }
  const better = planForLot(lot.quantity, severity, { ...settings, level }, { measured })
  return { message: `At inspection level ${level}: ${planInWords(better)}.` }
}
