import { count } from '@/shared/rules/measure'
import { formatNumber } from '@/shared/quantity/format'
import { aboutLot, isUsable, kindAndPart, lotName, partsDelivered } from '@/shared/records/lot-identity'
import { methodName } from '@/shared/methods/test-methods'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Part,
  type Remedy,
  type Verdict,
  type WorkingLine,
} from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import type { LotSampleFound } from './lot-sample'
import { seriesOf, type SampledLot } from './sampled-series'
import { spokenByWorst, worstPart } from '@/shared/rules/worst-part'
import { conditionAbout, conditionInWords } from '@/shared/lot-tests/stated-conditions'
import { marginsOf } from './sample-margins'
import { proofInWords, sampleInWords, proofMeasured, proofOfLot, sampleMeasured } from './sample-in-words'
import { normalityInWords, normalityMeasured } from './look-at-normality'
import { SAMPLING_SOURCES, type Question } from './sampled-question'
import { firstAccepts, pieces, planInWords } from './sampling-plan'
import { tablesNote, type SamplingInputs } from './sampling-reads'

/** A lot's part of the finding, with what the overall finding needs of it. */
interface JudgedLot {
  readonly part: Part
  readonly sampled: SampledLot
  /** A rejected lot goes into nothing: it is shown, and does not hold the stage up. */
  readonly counts: boolean
}

/**
 * Judges every lot that a sampled test was asked of or made on: the lot's plan
 * by its size and its supplier's history, what the specimens showed, and what
 * that proves of the lot.
 */
export function judgeSampledLots(question: Question, inputs: SamplingInputs): Judged {
  const { method, governing } = question
  const judged = seriesOf(method, governing.value, inputs)
    .flatMap(({ lots }) => lots)
    .filter(({ own }) => own)
    .filter(({ asked, tests }) => asked || tests.counted.length + tests.excluded.length > 0)
    .map((sampled) => judgeLot(sampled, question, inputs))
  const absent = absentParts(question, inputs)
  if (judged.length + absent.length === 0)
    return notApplicable(`No part is to be tested by ${methodName(method.key)}, and none was.`)

  const parts = [...judged.map(({ part }) => part), ...absent]
  const counted = [...judged.filter(({ counts }) => counts).map(({ part }) => part), ...absent]
  if (counted.length === 0) return allRejected(question, parts)
  const worst = worstPart(counted)
  const behind = judged.find(({ part }) => part === worst)
  return {
    ...spokenByWorst(counted),
    limit: question.limitMessage,
    working: behind ? workingOf(behind.sampled, question, inputs) : [],
    sources: [...question.sources, ...SAMPLING_SOURCES],
    parts,
    notes: [...notesOf(question, judged), ...tablesNote(inputs)],
    cautions: question.cautions,
  }
}

function judgeLot(sampled: SampledLot, question: Question, inputs: SamplingInputs): JudgedLot {
  const { lot, sample, test } = sampled
  const rejected = !isUsable(lot)
  const under = conditionInWords(test.condition, test.stated)
  const subject = [lotName(lot), under, rejected && 'rejected'].filter(Boolean).join(', ')
  const judgement = sample ? judgeSample(sampled, sample, question, inputs) : untested(sampled, question)
  const about = {
    ...aboutLot(lot),
    ...conditionAbout(test.condition, test.stated),
    ...(rejected && { disposition: 'reject' }),
  }
  return { part: { subject, about, ...judgement }, sampled, counts: !rejected }
}

type Judgement = Omit<Part, 'subject' | 'about'>

function untested({ plan, tests }: SampledLot, { method }: Question): Judgement {
  const reasons = tests.excluded.map(({ test, because }) => `test of ${test.testedOn}: ${because}`)
  const why = reasons.length > 0 ? `no result counts (${reasons.join('; ')})` : 'not tested'
  return {
    verdict: 'undetermined',
    found: `${why} by ${methodName(method.key)}; the plan asks for ${planInWords(plan)}.`,
    remedy: { message: `Test ${testedAtLeast(plan)} of the lot under the specified conditions.` },
  }
}

function judgeSample(
  { lot, plan, inspection, look }: SampledLot,
  sample: LotSampleFound,
  question: Question,
  inputs: SamplingInputs,
): Judgement {
  const seen = sampleInWords(sample, question)
  const { outcome } = sample
  if (outcome.decided === undefined) {
    const more = outcome.stillToTest
    return {
      verdict: 'undetermined',
      ...(look && { measured: normalityMeasured(look) }),
      found: `${seen}; ${look?.skewed ? `${normalityInWords(look)} T` : 't'}he plan asks for ${planInWords(plan)}: ${more} more to test.`,
      remedy: { message: `Test ${more} more ${pieces(more)} of the lot.` },
    }
  }
  const proof = proofOfLot(lot.quantity, sample, inputs)
  const shown = proofInWords(proof)
  const margins = marginsOf(plan, sample, question, inputs)
  const ended = inspection.severity === 'discontinued'
  const verdicts: Verdict[] = margins.map(verdictOn)
  if (outcome.decided === 'accepted in the gap') verdicts.push('marginal')
  if (outcome.decided === 'rejected' || ended) verdicts.push('fails')
  const verdict = worstVerdict(verdicts)
  const first =
    plan.kind === 'double' && firstAccepts(plan, sample.nonconformingInFirst) ? plan.firstSize : undefined
  const outcomeMessage = {
    accepted:
      first === undefined
        ? 'accepted'
        : `accepted on its first sample (${sample.nonconformingInFirst} nonconforming of ${first})`,
    'accepted in the gap': 'accepted between the two numbers, which returns the series to normal inspection',
    rejected: 'rejected by the plan',
  }[outcome.decided]
  const stop = ended ? ' Inspection of this supplier’s lots is discontinued until it has acted.' : ''
  return {
    verdict,
    measured: {
      decided: outcome.decided,
      discontinued: ended,
      ...sampleMeasured(sample, question),
      ...proofMeasured(proof),
      ...(first !== undefined && outcome.decided === 'accepted' && { firstSample: count(first) }),
      ...(look && normalityMeasured(look)),
    },
    found: `${seen}; ${outcomeMessage}. ${shown}${look ? ` ${normalityInWords(look)}` : ''}${stop}`,
    margin: margins.find((margin) => verdictOn(margin) === verdict) ?? margins[0],
    remedy: remedyOf(outcome.decided === 'rejected', ended),
  }
}

function remedyOf(rejectedByPlan: boolean, ended: boolean): Remedy | undefined {
  if (ended) return { message: 'Record the supplier’s accepted corrective action, or reject the lot.' }
  if (!rejectedByPlan) return undefined
  return {
    message:
      'Reject the lot, or have it refinished once and test it again as a new lot; a second failure rejects it for good.',
  }
}

function workingOf(sampled: SampledLot, question: Question, inputs: SamplingInputs): WorkingLine[] {
  const { lot, plan, inspection, sample, settings } = sampled
  const lines: WorkingLine[] = [
    {
      label: 'Plan',
      formula: 'lot size and inspection level → code letter; letter, AQL and state of inspection → sample',
      numbers: `${lot.quantity} ${pieces(lot.quantity)}, level ${settings.level}, AQL ${settings.limit} %`,
      result: planInWords(plan),
    },
    { label: 'State of inspection', result: `${inspection.severity}: ${inspection.because}` },
  ]
  if (!sample) return lines
  lines.push({
    label: 'Specimens',
    formula: 'a specimen is bad when any of its places is',
    numbers: `${sample.tally.places} places, limit ${question.limitMessage}`,
    result: sampleInWords(sample, question),
  })
  if (sample.variables && plan.kind === 'variables') {
    lines.push({
      label: 'Quality index',
      formula: 'Q = distance of the mean from the limit ÷ sample standard deviation; accepted when Q ≥ k',
      numbers: `mean ${formatNumber(sample.variables.mean)}, s ${formatNumber(sample.variables.standardDeviation)}, k ${plan.acceptabilityConstant}`,
      result: formatNumber(sample.variables.qualityIndex),
    })
  }
  lines.push({
    label: 'What it proves',
    formula:
      'the most nonconforming pieces D in the lot for which P(so few found | D) still exceeds 1 − confidence',
    numbers: `${sample.nonconforming} nonconforming of ${sample.tested}, lot of ${lot.quantity}`,
    result: proofInWords(proofOfLot(lot.quantity, sample, inputs)),
  })
  return lines
}

/** Rows of the plan for which no lot has come in. */
function absentParts({ method }: Question, { needed, lots }: SamplingInputs): Part[] {
  const present = partsDelivered(lots)
  return needed
    .filter((row) => row.method === method.key && !present.has(kindAndPart(row)))
    .map(({ part, kind }) => ({
      subject: part,
      verdict: 'undetermined',
      found: `no lot of this ${kind} is recorded, so nothing was tested by ${methodName(method.key)}.`,
      remedy: { message: 'Record the lot when it is received, then test it.' },
    }))
}

/** Everything that came was sent back: nothing bad is in use, and nothing good is there yet. */
function allRejected({ method, limitMessage }: Question, parts: readonly Part[]): Judged {
  return {
    ...undetermined(
      `Every lot tested by ${methodName(method.key)} was rejected; a lot that may be used is still to come.`,
      ['a lot that is not rejected'],
      limitMessage,
    ),
    parts,
  }
}

function notesOf(question: Question, judged: readonly JudgedLot[]): string[] {
  const aside = judged.flatMap(({ sampled }) =>
    sampled.tests.excluded.map(
      ({ test, because }) => `Lot ${sampled.lot.code}, test of ${test.testedOn}, set aside: ${because}.`,
    ),
  )
  const whole = judged
    .filter(({ sampled: { plan } }) => plan.kind !== 'double' && plan.everyUnit)
    .map(
      ({ sampled: { lot } }) =>
        `Lot ${lot.code} is so small that the plan takes all of it, and tested pieces are spent: order coupons, or choose a special level.`,
    )
  return [
    ...(question.notes ?? []),
    'The sample counts specimens: places, holes or leads of one specimen share one finish and are not independent trials.',
    ...aside,
    ...whole,
  ]
}

const testedAtLeast = (plan: SampledLot['plan']): string => {
  const count = plan.kind === 'double' ? plan.firstSize : plan.sampleSize
  return `${count} ${pieces(count)}`
}
