import { inspectorKappaLeast } from '@/shared/plan/limits/assessment-proof'
import { agreementStudyAsked } from '@/shared/plan/parameters/assessment-proof'
import { formatAgainst, formatNumber } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notAsked } from '@/shared/rules/not-asked'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { cohenKappa } from '@/shared/statistics/agreement/cohen-kappa'
import { crossTable } from '@/shared/statistics/agreement/cross-table'
import { inspectorCalls } from './assessment-reads'

type Call = RecordOf<'inspector-call'>

const CALLS = ['sound', 'defective'] as const
type Sorted = (typeof CALLS)[number]
const GUARD = 0.05
const CONFIDENCE = 0.95

export const inspectorAgreement = rule({
  id: 'inspector-agreement',
  title: 'Agreement of inspectors',
  why: 'If two trained people call the same joint differently, the count of defects depends on who looked. Kappa says how far they agree beyond chance.',
  stage: 'assessment',
  version: 1,
  reads: { asked: optional(agreementStudyAsked), least: inspectorKappaLeast, calls: inspectorCalls },
  judge({ asked, least, calls }): Judged {
    if (calls.length === 0 && asked !== true)
      return notAsked('No study of the inspectors’ agreement is asked, and none was made.')
    const limit = `Kappa of at least ${least.value} between every two inspectors, and with what is known (${namedRuling(least)}).`
    if (calls.length === 0)
      return undetermined(
        'No call is recorded yet: let two inspectors or more call the same joints blind.',
        ['inspectors’ calls on the same joints'],
        limit,
      )
    const parts = [...grouped(calls, ({ study }) => study)].flatMap(([study, own]) =>
      judgeStudy(study, own, least.value),
    )
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
      notes: ['Kappa depends on how many joints of the set are bad: mix in a third or so.'],
    })
  },
})

const grouped = <T>(rows: readonly T[], keyOf: (row: T) => string): Map<string, T[]> => {
  const groups = new Map<string, T[]>()
  for (const row of rows) {
    const key = keyOf(row)
    const known = groups.get(key)
    if (known) known.push(row)
    else groups.set(key, [row])
  }
  return groups
}

const sort = (call: string): Sorted => (call === 'sound' ? 'sound' : 'defective')

/** Every two inspectors of a study on the joints of its first round, and each with what is known. */
function judgeStudy(study: string, calls: readonly Call[], least: number): Part[] {
  const first = calls.filter(({ round }) => round === 1)
  const known = new Map<string, Sorted>()
  for (const { joint, reference } of calls) if (reference !== undefined) known.set(joint, sort(reference))
  const inspectors = [...grouped(first, ({ inspector }) => inspector)].map(([name, own]) => ({
    name,
    calls: new Map(own.map(({ joint, call }) => [joint, sort(call)])),
  }))
  return inspectors.flatMap((one, index) => [
    ...inspectors
      .slice(index + 1)
      .map((other) => judgePair(`${study}: ${one.name} and ${other.name}`, one.calls, other.calls, least)),
    ...(known.size > 0
      ? [judgePair(`${study}: ${one.name} and what is known`, one.calls, known, least)]
      : []),
  ])
}

function judgePair(
  subject: string,
  one: ReadonlyMap<string, Sorted>,
  other: ReadonlyMap<string, Sorted>,
  least: number,
): Part {
  const joints = [...one.keys()].filter((joint) => other.has(joint))
  const train = { says: 'Look together at the joints called differently, agree, train, and call a new set.' }
  if (joints.length === 0)
    return { subject, verdict: 'undetermined', found: 'no joint was called by both.', remedy: train }
  const table = crossTable(
    joints.map((joint) => one.get(joint)!),
    joints.map((joint) => other.get(joint)!),
    CALLS,
  )
  const { kappa, observedAgreement, interval } = cohenKappa(table, CONFIDENCE)
  if (kappa === undefined)
    return {
      subject,
      verdict: 'undetermined',
      found: `all ${joints.length} joints were called alike: a set without both good and bad joints shows no agreement.`,
      remedy: { says: 'Make up a set with sound and defective joints.' },
    }
  const margin: Margin = { found: kappa, limit: least, unit: '1', direction: 'at least', guardBand: GUARD }
  const verdict = verdictOn(margin)
  const printed = formatAgainst(kappa, least, '1').found
  const bounds = interval
    ? ` (${formatNumber(interval.lower, 2)} to ${formatNumber(interval.upper, 2)} with 95 % confidence)`
    : ''
  return {
    subject,
    verdict,
    found: `kappa ${printed}${bounds}, ${formatNumber(observedAgreement * 100, 3)} % of ${joints.length} calls alike.`,
    margin,
    ...(verdict !== 'meets' && { remedy: train }),
  }
}
