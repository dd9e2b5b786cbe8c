import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { published } from '@/shared/sources/provenance'
import { limitingQualityMax } from '@/shared/plan/limits/evaluation-sampling'
import { samplingRiskGuard } from '@/shared/plan/limits/evaluation-guards'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import { methodName } from '@/shared/methods/test-methods'
import type { Lot } from '@/shared/records/lot'
import { aboutLot, isUsable, kindAndPart, lotName, partsDelivered } from '@/shared/records/lot-identity'
import { verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { count, measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { rule } from '@/shared/rules/rule'
import { INSPECTION_LEVELS, LOT_BANDS } from '@/shared/statistics/sampling/code-letters'
import type { Severity } from '@/shared/statistics/sampling/single-plan'
import { methodsInUse, sampledLimits } from '@/shared/lot-tests/sampled-methods'
import { allSeries } from '@/shared/sampling/sampled-series'
import { planRisk, riskInWords } from '@/shared/sampling/plan-risk'
import {
  planForLot,
  planInWords,
  type SamplingPlan,
  type SamplingSettings,
  planMeasured,
} from '@/shared/sampling/sampling-plan'
import { samplingReads, settingsFor, tablesNote, type SamplingInputs } from '@/shared/sampling/sampling-reads'
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
  version: 3,
  reads: { ...samplingReads, ...sampledLimits, max: limitingQualityMax, guard: samplingRiskGuard },
  judge(inputs): Judged {
    const { max } = inputs
    const limit = `a lot accepted one time in ten holds at most ${formatQuantity(max.value, '%')} nonconforming pieces (${governingName(max)})`
    const planned = allSeries(inputs).flatMap(({ method, lots }) =>
      lots
        .filter(({ lot, own, asked }) => own && asked && isUsable(lot))
        .map(({ lot, plan, settings }) => ({
          lot,
          plan,
          message: planInWords(plan),
          measured: method.fitsVariables,
          settings,
        })),
    )
    const distinct = planned.filter(
      (one, at) =>
        !planned.slice(0, at).some((other) => other.lot === one.lot && sameValue(other.plan, one.plan)),
    )
    const asked = { maxPct: max.value, guardShare: inputs.guard.value / 100 }
    const judged = [
      ...distinct.map((one) => ({ ...one, part: partOf(one, asked) })),
      ...statedPlans(inputs).map((stated) => ({ ...stated, part: statedPart(stated, asked) })),
    ]
    if (judged.length === 0) return notApplicable('No part is to be tested by a sample.')
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
  readonly settings: SamplingSettings
}

/** The most nonconforming pieces that may pass one time in ten. */
interface Asked {
  readonly maxPct: number
  readonly guardShare: number
}

function partOf({ lot, plan, message, measured, settings }: Planned, asked: Asked): Part {
  const common = { subject: lotName(lot), about: aboutLot(lot), measured: planMeasured(plan) }
  return { ...common, ...judgePlan({ lotSize: lot.quantity, plan, message, measured, settings }, asked) }
}

/** A plan for lots of one size, judged by its operating curve. */
function judgePlan(
  one: Pick<Planned, 'plan' | 'message' | 'measured' | 'settings'> & { readonly lotSize: number },
  asked: Asked,
): Pick<Part, 'verdict' | 'found' | 'margin' | 'remedy'> {
  const { plan, message } = one
  if (takesAll(plan)) return { verdict: 'meets', found: `${message}: nothing is left to chance.` }
  const margin = marginOf(plan, asked)
  const verdict = verdictOn(margin)
  const pair = formatAgainst(margin.found, asked.maxPct, '%')
  return {
    verdict,
    found: `${message}; with ${pair.found} nonconforming it still passes one time in ten.`,
    margin,
    remedy: verdict === 'meets' ? undefined : betterPlan(one, asked),
  }
}

const takesAll = (plan: SamplingPlan): boolean => plan.kind !== 'double' && plan.everyUnit

const marginOf = (plan: SamplingPlan, { maxPct, guardShare }: Asked): Margin => ({
  found: planRisk(plan).oneInTen * 100,
  limit: maxPct,
  unit: '%',
  direction: 'at most',
  guardBand: guardShare * maxPct,
})

/** The least inspection level at which the same scheme would meet. */
function betterPlan(
  {
    lotSize,
    plan,
    settings,
    measured,
  }: Pick<Planned, 'plan' | 'measured' | 'settings'> & { readonly lotSize: number },
  asked: Asked,
) {
  if (plan.kind === 'zero-acceptance') {
    return {
      message: plan.stated
        ? 'State a larger sample for the part, or leave it to the plan of the programme.'
        : 'Ask the zero-acceptance plan for a smaller share of nonconforming pieces or more confidence.',
    }
  }
  const severity: Severity = plan.severity
  const level = INSPECTION_LEVELS.slice(INSPECTION_LEVELS.indexOf(settings.level) + 1).find((candidate) => {
    const better = planForLot(lotSize, severity, { ...settings, level: candidate }, { measured })
    return takesAll(better) || verdictOn(marginOf(better, asked)) === 'meets'
  })
  if (level === undefined) return { message: 'No level of this scheme does: use a zero-acceptance plan.' }
  const better = planForLot(lotSize, severity, { ...settings, level }, { measured })
  return { message: `At inspection level ${level}: ${planInWords(better)}.` }
}

/** What the plan asks of a part that no usable lot has come in of: by the lot size expected, or by every size. */
interface StatedPlan {
  readonly part: string
  readonly kind: string
  readonly method: string
  readonly lotSize: number | undefined
  readonly settings: SamplingSettings
  readonly measured: boolean
  readonly plan: SamplingPlan
  readonly message: string
}

/** Where no size is expected, the plan is shown for lots such as the tables have most rows for. */
const SHOWN_LOT = 500

function statedPlans(inputs: SamplingInputs): StatedPlan[] {
  const delivered = partsDelivered(inputs.lots.filter(isUsable))
  return methodsInUse(inputs).flatMap((method) =>
    inputs.needed
      .filter((row) => row.method === method.key && !delivered.has(kindAndPart(row)))
      .map((row) => {
        const settings = settingsFor(row, method.key, inputs)
        const measured = method.fitsVariables
        const plan = planForLot(row.lotSize ?? SHOWN_LOT, 'normal', settings, { measured })
        const { part, kind, lotSize } = row
        return {
          part,
          kind,
          method: method.key,
          lotSize,
          settings,
          measured,
          plan,
          message: planInWords(plan),
        }
      }),
  )
}

function statedPart(stated: StatedPlan, asked: Asked): Part {
  const { part, kind, method, lotSize, plan } = stated
  const common = { subject: `${part}, ${methodName(method)}, as planned`, about: { part, kind, method } }
  if (lotSize !== undefined) {
    return {
      ...common,
      measured: { lotSize: count(lotSize, 'pieces'), ...planMeasured(plan) },
      ...judgePlan({ ...stated, lotSize }, asked),
    }
  }
  return { ...common, ...judgeEverySize(stated, asked) }
}

/** The largest lot of every band of the tables, the open one by a lot beyond the last. */
const LOT_SIZES = LOT_BANDS.map(({ lotUpTo }) => (Number.isFinite(lotUpTo) ? lotUpTo : 1_000_000))

/** A plan whose lots are of no size yet: it meets where it does for every size, and fails where it does for every one that leaves anything untried. */
function judgeEverySize(
  stated: StatedPlan,
  asked: Asked,
): Pick<Part, 'verdict' | 'found' | 'remedy' | 'measured' | 'margin'> {
  const { settings, measured } = stated
  const sizes = LOT_SIZES.map((lotSize) => ({
    lotSize,
    plan: planForLot(lotSize, 'normal', settings, { measured }),
  }))
    .filter(({ plan }) => !takesAll(plan))
    .map((one) => ({ ...one, margin: marginOf(one.plan, asked) }))
  const outside = sizes.filter(({ margin }) => verdictOn(margin) === 'fails')
  const least = sizes.reduce((best, one) => (one.margin.found < best.margin.found ? one : best))
  const most = sizes.reduce((worst, one) => (one.margin.found > worst.margin.found ? one : worst))
  const span = {
    measured: {
      least: measure(least.margin.found, '%'),
      most: measure(most.margin.found, '%'),
    },
  }
  const shares = `${formatQuantity(least.margin.found, '%', 3)} to ${formatQuantity(most.margin.found, '%', 3)}`
  if (outside.length === sizes.length) {
    return {
      ...span,
      verdict: 'fails',
      margin: least.margin,
      found: `whatever the size of the lot, it still passes one time in ten with ${shares} nonconforming.`,
      remedy: betterPlan({ ...stated, ...least }, asked),
    }
  }
  if (outside.length === 0) {
    return {
      ...span,
      verdict: verdictOn(most.margin),
      margin: most.margin,
      found: `whatever the size of the lot, with ${shares} nonconforming it passes no more than one time in ten.`,
    }
  }
  return {
    ...span,
    verdict: 'undetermined',
    found: `by the size of the lot it still passes one time in ten with ${shares} nonconforming, and no size is expected yet.`,
    remedy: { message: 'Say how large its lots will be, or give the part a sample of its own.' },
  }
}
