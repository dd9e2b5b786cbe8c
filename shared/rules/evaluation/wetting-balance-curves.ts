import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { published } from '@/shared/sources/provenance'
import { endsTooSoon, endsUnwetted, type WettingCurveMarks } from '@/shared/wetting/wetting-curve'
import { wettingBalanceGuard } from '@/shared/plan/limits/evaluation-guards'
import { dewettingDropMax } from '@/shared/plan/limits/evaluation-wetting-balance'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import {
  wettingBalanceAgreedBy,
  wettingBalanceCriteria,
} from '@/shared/plan/parameters/evaluation-wetting-balance'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName, aboutLot } from '@/shared/records/lot-identity'
import { wettingBalance as method } from '@/shared/methods/wetting-balance'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Part,
  type WorkingLine,
} from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { curvesOfTest } from '@/shared/wetting/curves-of-test'
import { countingReads, sortTests, type CountingInputs } from '@/shared/lot-tests/counted-tests'
import { conditionAbout, conditionInWords } from '@/shared/lot-tests/stated-conditions'
import { askedOf, testsAsked, type TestAsked } from '@/shared/lot-tests/tests-asked'
import {
  CRITERIA_SOURCE,
  WETTING_BALANCE_CRITERIA,
  judgeCurve,
  type WettingBalanceCriteria,
} from '@/shared/wetting/wetting-balance-criteria'
import { spokenByWorst, worstPart } from '@/shared/rules/worst-part'
import { measure, count } from '@/shared/rules/measure'

const EVIDENCE_SOURCE = published(
  'IEC 60068-2-69:2017: wetting-balance data are not intended as absolute pass or fail',
)

export const wettingBalanceCurves = rule({
  id: 'wetting-balance-curves',
  title: 'Wetting-balance curves',
  why: 'The curve shows how fast and how well solder takes, and whether it draws back. It is evidence; it decides a lot only where named people agreed that it does, or where solder shuns the surface to the end.',
  formula: 'criteria of the edition on each curve; F = γ · P · cos θ − ρ · g · V; no lead ends unwetted',
  stage: 'evaluation',
  version: 4,
  reads: {
    ...countingReads,
    needed: lotsNeeded,
    criteria: optional(wettingBalanceCriteria),
    agreedBy: optional(wettingBalanceAgreedBy),
    drop: dewettingDropMax,
    guard: wettingBalanceGuard,
  },
  judge(inputs): Judged {
    const choice = inputs.criteria ?? 'evidence'
    const agreed = choice === 'evidence' ? undefined : WETTING_BALANCE_CRITERIA[choice]
    const limit = agreed
      ? `${agreed.label}, agreed by ${inputs.agreedBy ?? '(nobody named)'}; fall after the peak at most ${formatQuantity(inputs.drop.value, '%')} (${governingName(inputs.drop)})`
      : 'none agreed: the curves are evidence, not a verdict, unless a specimen ends unwetted (over 90°)'
    const isAsked = askedOf(inputs.needed)
    const judged = inputs.lots
      .filter((lot) => isUsable(lot) && (isAsked(lot, method.key) || hasCurves(lot)))
      .flatMap((lot) =>
        testsAsked(lot, method.key, inputs)
          .filter(({ condition }) => isAsked(lot, method.key) || wasTriedUnder(lot, inputs, condition))
          .map((asked) =>
            judgeLot(
              lot,
              asked,
              inputs,
              agreed && { ...agreed, dropMaxPct: inputs.drop.value, guardPct: inputs.guard.value },
            ),
          ),
      )
    const base = {
      limit,
      sources: agreed ? [CRITERIA_SOURCE, sourceOf(inputs.drop)] : [EVIDENCE_SOURCE],
      cautions: method.cautions,
      notes: [
        'The contact angle is 90° on the buoyancy line, not on the zero line. On a thick coupon buoyancy can take half the force: a force means nothing without perimeter, depth and density.',
      ],
    }
    if (judged.length === 0)
      return notApplicable('No wetting-balance curve is asked for, and none is recorded.')
    const parts = judged.map(({ part }) => part)
    const worst = worstPart(parts)
    if (agreed && inputs.agreedBy === undefined && worst.verdict !== 'fails') {
      const found = 'Criteria are chosen, and nobody is named who agreed that the balance decides.'
      return undetermined(found, [wettingBalanceAgreedBy.label], limit)
    }
    const speaker = judged.find(({ part }) => part === worst)!
    return { ...spokenByWorst(parts), working: speaker.marks ? workingOf(speaker.marks) : [], ...base }
  },
})

const hasCurves = (lot: Lot): boolean => lot.tests.some((test) => test.method === method.key)

type AgreedCriteria = WettingBalanceCriteria & { readonly dropMaxPct: number; readonly guardPct: number }

interface JudgedLot {
  readonly part: Part
  /** The curve that speaks for the lot. */
  readonly marks?: WettingCurveMarks
}

function wasTriedUnder(lot: Lot, inputs: CountingInputs, condition: TestAsked['condition']): boolean {
  const { counted, excluded } = sortTests(lot, method.key, inputs, condition)
  return counted.length + excluded.length > 0
}

function judgeLot(
  lot: Lot,
  { condition, stated }: TestAsked,
  inputs: CountingInputs,
  agreed: AgreedCriteria | undefined,
): JudgedLot {
  const common = {
    subject: [lotName(lot), conditionInWords(condition, stated)].filter(Boolean).join(', '),
    about: { ...aboutLot(lot), ...conditionAbout(condition, stated) },
  }
  const { counted, excluded } = sortTests(lot, method.key, inputs, condition)
  const open = (found: string, measured?: Part['measured']): JudgedLot => ({
    part: {
      ...common,
      ...(measured && { measured }),
      verdict: 'undetermined',
      found,
      remedy: { message: 'Record a curve under the specified conditions.' },
    },
  })
  const read = counted.map(curvesOfTest)
  const broken = read.find((one) => typeof one === 'string')
  if (broken !== undefined) return open(`a curve cannot be read: ${String(broken)}.`)
  const curves = read.flatMap((one) => (typeof one === 'string' ? [] : one))
  if (curves.length === 0) {
    const reasons = excluded.map(({ test, because }) => `test of ${test.testedOn}: ${because}`)
    return open(reasons.length > 0 ? `no curve counts (${reasons.join('; ')}).` : 'no curve is recorded.')
  }
  const cut = curves.find(endsTooSoon)
  const unwetted = curves.filter(endsUnwetted)
  if (unwetted.length > 0) return shunned(common, curves.length, unwetted)
  if (cut)
    return open(
      `the curve of specimen ${cut.specimen} ends ${formatQuantity(cut.endAtS, 's', 3)} after contact, too soon to tell of wetting.`,
      { specimen: cut.specimen, endsAt: measure(cut.endAtS, 's') },
    )
  return agreed ? judgeCurves(common, curves, agreed) : asEvidence(common, curves)
}

type Subject = Pick<Part, 'subject' | 'about'>

function judgeCurves(
  subject: Subject,
  curves: readonly WettingCurveMarks[],
  agreed: AgreedCriteria,
): JudgedLot {
  const judged = curves.flatMap((marks) =>
    judgeCurve(marks, agreed, agreed).map((criterion) => ({
      marks,
      criterion,
      verdict: verdictOn(criterion.margin),
    })),
  )
  const verdict = worstVerdict(judged.map((one) => one.verdict))
  const worst = judged.find((one) => one.verdict === verdict)!
  const failing = new Set(judged.filter((one) => one.verdict === 'fails').map(({ marks }) => marks))
  return {
    marks: worst.marks,
    part: {
      ...subject,
      verdict,
      measured: {
        curves: count(curves.length),
        outside: count(failing.size),
        specimen: String(worst.marks.specimen),
        criterion: worst.criterion.key,
      },
      found: `${curves.length} curves, ${failing.size} outside; specimen ${worst.marks.specimen} ${worst.criterion.found}.`,
      margin: worst.criterion.margin,
    },
  }
}

/** No edition of criteria passes a surface that solder shuns to the end. */
function shunned(subject: Subject, curves: number, unwetted: readonly WettingCurveMarks[]): JudgedLot {
  const deepest = unwetted.reduce((worst, one) =>
    one.endMN - one.buoyancyLineMN < worst.endMN - worst.buoyancyLineMN ? one : worst,
  )
  return {
    marks: deepest,
    part: {
      ...subject,
      verdict: 'fails',
      measured: { curves: count(curves), unwetted: count(unwetted.length), specimen: deepest.specimen },
      found: `${unwetted.length} of ${curves} curves end below the buoyancy line, at an angle over 90°: specimen ${deepest.specimen} does not wet.`,
      margin: {
        found: deepest.endMN,
        limit: deepest.buoyancyLineMN,
        unit: 'mN',
        direction: 'at least',
        guardBand: 0,
      },
      remedy: { message: 'Reject the lot, or have it refinished and test it again as a new lot.' },
    },
  }
}

/** What the curves show, for whoever weighs it. */
function asEvidence(subject: Subject, curves: readonly WettingCurveMarks[]): JudgedLot {
  const slowest = curves.reduce((worst, one) =>
    (one.buoyancyCrossS ?? Infinity) > (worst.buoyancyCrossS ?? Infinity) ? one : worst,
  )
  const crossing =
    slowest.buoyancyCrossS === undefined
      ? `specimen ${slowest.specimen} ends at 90°`
      : `the slowest passes 90° at ${formatQuantity(slowest.buoyancyCrossS, 's', 3)}`
  const angles = curves.flatMap(({ angleAt2sDeg }) => (angleAt2sDeg === undefined ? [] : [angleAt2sDeg]))
  const angle =
    angles.length > 0 ? `, largest angle at 2 s ${formatQuantity(Math.max(...angles), '°', 3)}` : ''
  return {
    marks: slowest,
    part: {
      ...subject,
      verdict: 'meets',
      measured: {
        curves: count(curves.length),
        slowest: String(slowest.specimen),
        ...(slowest.buoyancyCrossS !== undefined && { crosses: measure(slowest.buoyancyCrossS, 's') }),
        ...(angles.length > 0 && { largestAngle: measure(Math.max(...angles), '°') }),
      },
      found: `${curves.length} curves recorded as evidence; ${crossing}${angle}.`,
    },
  }
}

function workingOf(marks: WettingCurveMarks): WorkingLine[] {
  const force = (value: number | undefined) =>
    value === undefined ? 'not recorded' : formatQuantity(value, 'mN', 3)
  const time = (value: number | undefined) => (value === undefined ? 'never' : formatQuantity(value, 's', 3))
  const angle = (value: number | undefined) =>
    value === undefined ? 'beyond what the stated surface tension can give' : formatQuantity(value, '°', 3)
  return [
    { label: 'Specimen', result: marks.specimen },
    { label: 'Buoyancy line', formula: '−ρ · g · V', result: force(marks.buoyancyLineMN) },
    { label: 'Theoretical force', formula: 'γ · P − ρ · g · V', result: force(marks.theoreticalMN) },
    { label: 'Passes 90° (buoyancy line)', result: time(marks.buoyancyCrossS) },
    { label: 'Passes the zero line', result: time(marks.zeroCrossS) },
    { label: 'Force at 2 s', result: force(marks.forceAt2sMN) },
    { label: 'Force at 5 s', result: force(marks.forceAt5sMN) },
    {
      label: 'Contact angle at 2 s',
      formula: 'acos((F + ρ · g · V) ÷ γ · P)',
      result: angle(marks.angleAt2sDeg),
    },
    {
      label: 'Fall after the peak',
      formula: '(peak − end) ÷ (peak − buoyancy line)',
      result:
        marks.dewettingDropPct === undefined
          ? 'no peak above the line'
          : formatQuantity(marks.dewettingDropPct, '%', 3),
    },
    { label: 'Area to 5 s', result: `${formatNumber(marks.areaTo5sMNs, 3)} mN·s` },
  ]
}
