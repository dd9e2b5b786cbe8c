import { itemHolding } from '@/shared/catalogue/standard-plan'
import { concessionFor, concessionName } from '@/shared/gate/concession'
import type { Judgement } from '@/shared/gate/judgement'
import type { ConcessionEntry, PlannedItem, ProgrammeState } from '@/shared/gate/programme-state'
import type { Finding, WorkingLine } from '@/shared/rules/finding'
import type { RecordPart } from '@/shared/rules/record-source'
import { readableOf, type AnyRule, type Readable } from '@/shared/rules/rule'
import { limitOrigin } from './limit-origin'
import type { Origins } from './origins'
import { recordOrigin } from './record-origin'
import type { WhyStep } from './step'
import { groundsOf, valueOrigin } from './value-origin'

/** What a rule reads, without saying which of it it can do without. */
export const readsOf = (rule: AnyRule): Readable[] => Object.values(rule.reads).map(readableOf)

/** The parts of the records that a rule reads. */
export const partsRead = (rule: AnyRule): RecordPart[] =>
  readsOf(rule).flatMap((read) => (read.source === 'records' ? [read.part] : []))

/**
 * Why a finding is as it is: the rule with its formula and the numbers in it, then every value, limit and record it
 * reads, each back to who stated it; what lets it pass; and who has approved its item over it.
 */
export function findingChain(
  rule: AnyRule,
  item: PlannedItem,
  state: ProgrammeState,
  judgement: Judgement,
  origins: Origins,
): WhyStep[] {
  const finding = judgement.findings.get(rule.id)
  const key = item.definition.key
  const concession = finding && concessionFor(finding, key, state)
  const holding = readsOf(rule).flatMap((read) =>
    read.source === 'parameter' ? (itemHolding.parameter(read.key)?.key ?? []) : [],
  )
  const grounds = groundsOf([...new Set([key, ...holding])], state)
  return [
    ruleStep(rule, finding),
    ...readsOf(rule).map((read) => readStep(read, state, origins)),
    ...(grounds.length > 0
      ? [{ what: 'Answers and evidence on its items', rests: grounds } satisfies WhyStep]
      : []),
    ...(concession ? [concessionStep(concession)] : []),
    ...approvalSteps(key, judgement),
  ]
}

const ruleStep = (rule: AnyRule, finding: Finding | undefined): WhyStep => ({
  what: `Rule: ${rule.title}, version ${rule.version}`,
  says: rule.formula,
  place: { kind: 'finding', rule: rule.id },
  ...(finding && {
    verdict: finding.verdict,
    lines: [
      finding.found,
      `Requirement: ${finding.limit}`,
      ...(finding.missing ?? []).map((one) => `Missing: ${one}`),
      ...finding.working.map(workingInWords),
      ...finding.sources.map(({ cite, how }) => `Source: ${cite} (${how})`),
    ],
  }),
})

/** "Dwell: contact length ÷ speed, with 40 mm and 1.2 m/min → 2 s" */
const workingInWords = ({ label, formula, numbers, result }: WorkingLine): string =>
  `${label}: ${[formula, numbers && `with ${numbers}`].filter(Boolean).join(', ')} → ${result}`

function readStep(read: Readable, state: ProgrammeState, origins: Origins): WhyStep {
  switch (read.source) {
    case 'parameter':
      return valueOrigin(read.key, state, origins)
    case 'limit':
      return limitOrigin(read, state, origins)
    case 'records':
      return recordOrigin(read.label, read.part, state.facts.records, origins)
    case 'today':
      return { what: 'The day of judging', says: state.facts.today }
  }
}

const concessionStep = (concession: ConcessionEntry): WhyStep => ({
  what: `${concessionName(concession)} lets it pass`,
  words: concession.why,
  by: { name: concession.requestedByName, at: concession.requestedAt },
  place: { kind: 'concession', number: concession.number },
  recorded: { at: concession.requestedAt, name: concession.rule },
  rests: (['design', 'quality'] as const).flatMap((department) => {
    const signed = concession[department]
    return signed
      ? [
          {
            what: `Granted for ${department}`,
            by: { name: signed.byName, at: signed.at },
            recorded: { at: signed.at, name: concession.rule },
          },
        ]
      : []
  }),
})

/** Who has agreed to an item, and whether that still covers it. */
export const approvalSteps = (key: string, { items }: Judgement): WhyStep[] =>
  items
    .filter(({ item }) => item.definition.key === key)
    .flatMap(({ approvals, item }) =>
      approvals.flatMap(({ approval, holds }) =>
        approval
          ? [
              {
                what: `Approval of ${item.definition.title} for ${approval.department}`,
                says: holds ? 'covers the item as it stands' : 'lapsed: what it covered has changed',
                by: { name: approval.personName, at: approval.at },
                place: { kind: 'item', item: key, part: 'approvals' } as const,
                why: { kind: 'approval', key: approval.id } as const,
                recorded: { at: approval.at, name: approval.id },
              },
            ]
          : [],
      ),
    )
