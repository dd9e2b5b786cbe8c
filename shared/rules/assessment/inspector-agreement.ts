import { inspectorKappaLeast } from '@/shared/plan/limits/assessment-proof'
import { agreementStudyAsked } from '@/shared/plan/parameters/assessment-proof'
import { formatAgainst, formatNumber } from '@/shared/quantity/format'
import {
  agreementStudies,
  type AgreementStudy,
  type PairAgreement,
} from '@/shared/inspection/agreement-study'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { inspectorCalls } from '@/shared/rules/assembly-record-sources'
import { measure, count } from '@/shared/rules/measure'

const GUARD = 0.05
const CONFIDENCE = 0.95

export const inspectorAgreement = rule({
  id: 'inspector-agreement',
  title: 'Agreement of inspectors',
  why: 'If two trained people call the same joint differently, the count of defects depends on who looked. Kappa says how far they agree beyond chance.',
  formula: 'κ = (agreed − by chance)/(1 − by chance), its lower bound ≥ least',
  stage: 'assessment',
  version: 1,
  reads: { asked: optional(agreementStudyAsked), least: inspectorKappaLeast, calls: inspectorCalls },
  judge({ asked, least, calls }): Judged {
    if (calls.length === 0 && asked !== true)
      return notApplicable('No study of the inspectors’ agreement is asked, and none was made.')
    const limit = `Kappa of at least ${least.value} between every two inspectors, and with what is known (${namedRuling(least)}).`
    if (calls.length === 0)
      return undetermined(
        'No call is recorded yet: let two inspectors or more call the same joints blind.',
        ['inspectors’ calls on the same joints'],
        limit,
      )
    const studies = agreementStudies(calls, CONFIDENCE)
    const parts = studies.flatMap((study) => partsOf(study, least.value))
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
        sourceOf(least),
        { cite: 'J. Cohen, Educational and Psychological Measurement 20 (1960): kappa', how: 'from memory' },
      ],
      notes: [
        'Kappa depends on how many joints of the set are bad: mix in a third or so.',
        ...studies.flatMap(notesOf),
      ],
    })
  },
})

/** The part of two lists of calls, named so. */
function judgePair(
  named: Pick<Part, 'subject' | 'about'>,
  { joints, kappa: found }: PairAgreement,
  least: number,
): Part {
  const train = { says: 'Look together at the joints called differently, agree, train, and call a new set.' }
  if (found === undefined)
    return { ...named, verdict: 'undetermined', found: 'no joint was called by both.', remedy: train }
  const { kappa, observedAgreement, interval } = found
  if (kappa === undefined)
    return {
      ...named,
      verdict: 'undetermined',
      found: `all ${joints} joints were called alike: a set without both good and bad joints shows no agreement.`,
      remedy: { says: 'Make up a set with sound and defective joints.' },
    }
  const margin: Margin = { found: kappa, limit: least, unit: '1', direction: 'at least', guardBand: GUARD }
  const verdict = verdictOn(margin)
  const printed = formatAgainst(kappa, least, '1').found
  const bounds = interval
    ? ` (${formatNumber(interval.lower, 2)} to ${formatNumber(interval.upper, 2)} with 95 % confidence)`
    : ''
  return {
    ...named,
    verdict,
    measured: {
      joints: count(joints, 'joints'),
      alike: measure(observedAgreement * 100, '%'),
      ...(interval && { lower: measure(interval.lower, '1'), upper: measure(interval.upper, '1') }),
    },
    found: `kappa ${printed}${bounds}, ${formatNumber(observedAgreement * 100, 3)} % of ${joints} calls alike.`,
    margin,
    ...(verdict !== 'meets' && { remedy: train }),
  }
}

/** Every two inspectors of a study, and each with what is known. */
const partsOf = ({ study, pairs, withKnown }: AgreementStudy, least: number): Part[] => {
  const subjectOf = ({ one, other }: PairAgreement): string => `${study}: ${one} and ${other}`
  return [
    ...pairs.map((pair) => {
      const about = { study, one: pair.one, other: pair.other }
      return judgePair({ subject: subjectOf(pair), about }, pair, least)
    }),
    ...withKnown.map((pair) => {
      const about = { study, one: pair.one, against: 'known' }
      return judgePair({ subject: subjectOf(pair), about }, pair, least)
    }),
  ]
}

/** What several inspectors show together, and each with their own second round; information beside the pairs that are judged. */
function notesOf({ study, inspectors, together, withSelf }: AgreementStudy): string[] {
  const said = (kappa: number, interval: Interval | undefined): string =>
    `kappa ${formatNumber(kappa, 3)}${interval ? ` (${formatNumber(interval.lower, 2)} to ${formatNumber(interval.upper, 2)})` : ''}`
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
