import { inspectorKappaMin } from '@/shared/plan/limits/assessment-proof'
import { agreementStudyAsked } from '@/shared/plan/parameters/assessment-proof'
import { estimateInWords, formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import {
  agreementStudies,
  type AgreementStudy,
  type PairAgreement,
} from '@/shared/inspection/agreement-study'
import { jointsStillToCall, kappaBounds } from '@/shared/inspection/agreement-bounds'
import { inspectorKappaConfidenceMin } from '@/shared/plan/limits/assessment-evidence'
import { undetermined, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { inspectorCalls } from '@/shared/rules/assembly-record-sources'
import { measure, count } from '@/shared/rules/measure'

export const inspectorAgreement = rule({
  id: 'inspector-agreement',
  title: 'Agreement of inspectors',
  why: 'If two trained people call the same joint differently, the count of defects depends on who looked. Kappa says how far they agree beyond chance.',
  formula: 'κ = (agreed − by chance)/(1 − by chance), its lower bound ≥ least',
  stage: 'assessment',
  version: 2,
  reads: {
    asked: optional(agreementStudyAsked),
    min: inspectorKappaMin,
    confidenceMin: inspectorKappaConfidenceMin,
    calls: inspectorCalls,
  },
  judge({ asked, min, confidenceMin, calls }): Judged {
    if (calls.length === 0 && asked !== true)
      return notApplicable('No study of the inspectors’ agreement is asked, and none was made.')
    const limit = `Kappa of at least ${min.value} between every two inspectors, and with what is known (${governingName(min)}), shown with ${formatQuantity(confidenceMin.value, '%')} confidence (${governingName(confidenceMin)}).`
    if (calls.length === 0)
      return undetermined(
        'No call is recorded yet: let two inspectors or more call the same joints blind.',
        ['inspectors’ calls on the same joints'],
        limit,
      )
    const confidence = confidenceMin.value / 100
    if (!(confidence > 0.5 && confidence < 1))
      return undetermined(
        'The confidence asked for must lie between 50 and 100 %, both excluded.',
        ['a confidence between 50 and 100 %'],
        limit,
      )
    const studies = agreementStudies(calls, 2 * confidence - 1)
    const parts = studies.flatMap((study) => partsOf(study, { min: min.value, confidence }))
    if (parts.length === 0)
      return undetermined(
        'One inspector alone, with nothing known of the joints: there is nobody to agree with.',
        ['calls of a second inspector on the same joints'],
        limit,
      )
    return judgedByParts({
      parts,
      noun: 'pairs',
      limit,
      working: [
        {
          label: 'Kappa',
          formula: '(agreed − by chance) / (1 − by chance), calls sorted into sound and defective',
          result: parts.map(({ subject, found }) => `${subject}: ${found}`).join(' '),
        },
      ],
      sources: [
        sourceOf(min),
        sourceOf(confidenceMin),
        { cite: 'J. Cohen, Educational and Psychological Measurement 20 (1960): kappa', how: 'from memory' },
        {
          cite: 'Bounds of kappa: Fleiss, Cohen and Everitt, Psychological Bulletin 72 (1969) 323, or the exact bounds of calls that differ (Clopper and Pearson 1934) where those are wider',
          how: 'computed',
        },
      ],
      notes: [
        'Kappa depends on how many joints of the set are bad: mix in a third or so.',
        ...studies.flatMap(notesOf),
      ],
    })
  },
})

interface Asked {
  readonly min: number
  /** One-sided, 0 to 1. */
  readonly confidence: number
}

/** The part of two lists of calls, named so. */
function judgePair(
  named: Pick<Part, 'subject' | 'about'>,
  { joints, kappa: found }: PairAgreement,
  { min, confidence }: Asked,
): Part {
  const train = {
    message: 'Look together at the joints called differently, agree, train, and call a new set.',
  }
  if (found === undefined)
    return { ...named, verdict: 'undetermined', found: 'no joint was called by both.', remedy: train }
  const { kappa, observedAgreement } = found
  if (kappa === undefined)
    return {
      ...named,
      verdict: 'undetermined',
      found: `all ${joints} joints were called alike: a set without both good and bad joints shows no agreement.`,
      remedy: { message: 'Make up a set with sound and defective joints.' },
    }
  const { lower, upper } = kappaBounds({ ...found, kappa }, confidence)
  const fails = upper < min
  const margin: Margin = {
    found: fails ? upper : lower,
    limit: min,
    unit: '1',
    direction: 'at least',
    guardBand: 0,
  }
  const part = {
    ...named,
    measured: {
      joints: count(joints, 'joints'),
      alike: measure(observedAgreement * 100, '%'),
      kappa: measure(kappa, '1'),
      lower: measure(lower, '1'),
      upper: measure(upper, '1'),
    },
    margin,
  }
  const said = `kappa ${formatNumber(kappa, 3)}, ${fails ? 'at most' : 'at least'} ${formatAgainst(margin.found, min, '1').found} with ${formatNumber(confidence * 100)} % confidence; ${formatNumber(observedAgreement * 100, 3)} % of ${joints} calls alike.`
  if (fails) return { ...part, verdict: 'fails', found: said, remedy: train }
  if (lower >= min) return { ...part, verdict: 'meets', found: said }
  const more = jointsStillToCall(found, min, confidence)
  const ask = more === undefined ? 'more joints' : `${formatNumber(more, 12)} more joints called alike`
  return {
    ...part,
    verdict: 'undetermined',
    found: `${said} Not shown yet: ${ask} would show it.`,
    remedy: {
      message: `Let both call ${ask}, in a set made up like this one; train first where calls differ.`,
    },
  }
}

/** Every two inspectors of a study, and each with what is known. */
const partsOf = ({ study, pairs, withKnown }: AgreementStudy, asked: Asked): Part[] => {
  const subjectOf = ({ one, other }: PairAgreement): string => `${study}: ${one} and ${other}`
  return [
    ...pairs.map((pair) => {
      const about = { study, one: pair.one, other: pair.other }
      return judgePair({ subject: subjectOf(pair), about }, pair, asked)
    }),
    ...withKnown.map((pair) => {
      const about = { study, one: pair.one, against: 'known' }
      return judgePair({ subject: subjectOf(pair), about }, pair, asked)
    }),
  ]
}

/** What several inspectors show together, and each with their own second round; information beside the pairs that are judged. */
function notesOf({ study, inspectors, together, withSelf }: AgreementStudy): string[] {
  const said = (kappa: number, interval: Interval | undefined): string =>
    `kappa ${interval ? estimateInWords(kappa, interval) : formatNumber(kappa, 2)}`
  const all =
    inspectors.length > 2 && together?.kappa !== undefined
      ? [
          `${study}: all ${together.inspectors} inspectors together ${said(together.kappa, together.interval)}, by Fleiss.`,
        ]
      : []
  const selves = withSelf.flatMap(({ one, kappa }) =>
    kappa?.kappa === undefined
      ? []
      : [`${study}: ${one} with the own second round ${said(kappa.kappa, kappa.interval)}.`],
  )
  return [...all, ...selves]
}
