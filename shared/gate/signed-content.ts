import { findParameter, mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { governingRequirement, type Limit, type Requirement } from '@/shared/plan/requirement'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { limitsRead } from '@/shared/rules/limits-read'
import { partsOfTheWorks } from '@/shared/rules/record-source'
import { readableOf } from '@/shared/rules/rule'
import type { Finding } from '@/shared/rules/finding'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import { partsNamedIn } from '@/shared/works/listed-part'
import { jsonValue } from './json-value'
import type { PlannedItem, ProgrammeState } from './programme-state'
import { concessionFor } from './concession'
import { memo } from '@/shared/memo'

/** The form of the covers written now; the first had no number (`first-cover.ts`). */
const COVER_FORM = 2

/**
 * What an approval of an item covers, as canonical JSON: the item, the values
 * it specifies and its rules read, the limits in force, the evidence, and the
 * verdict of every finding with the version of the rule that gave it. Words of
 * the program are not in it, so that they may change; words of people are. Two
 * covers of one form are the same agreement exactly when the texts are equal.
 */
export const signedContentOf = (
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): string =>
  canonicalJson({
    ...coveredSubstance(item, state, findings),
    form: COVER_FORM,
    asks: questionOf(item),
    limits: Object.fromEntries(
      limitsBehind(item).map((limit) => [limit.key, governingSigned(limit, state.facts.requirements)]),
    ),
  })

/** What a standard item asks goes by its version, what an added one asks by the words of who added it. */
export type CoveredQuestion = { readonly version: number } | { readonly text: string }

const questionOf = ({ definition, added }: PlannedItem): CoveredQuestion =>
  added ? { text: definition.asks } : { version: definition.version }

/** A default goes by its value, since its source is named in words of the program; a stated limit also by its document. */
export type CoveredLimit = { readonly value: number; readonly authority: string } & (
  { readonly by: 'default' } | { readonly by: 'stated'; readonly document: string }
)

function governingSigned(limit: Limit, requirements: readonly Requirement[]): CoveredLimit {
  const { value, authority, document, kind } = governingRequirement(limit, requirements)
  return kind === 'default' ? { value, authority, by: kind } : { value, authority, by: kind, document }
}

/** What every form of cover holds alike. */
export function coveredSubstance(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
) {
  const { definition } = item
  return {
    item: definition.key,
    approvers: [...definition.approvers],
    setAside: item.tailoredOut
      ? { reason: item.tailoredOut.reason, agreed: item.tailoredOut.agreed !== null }
      : null,
    values: Object.fromEntries(
      parametersBehind(item)
        .filter((key) => state.facts.values.has(key) || !findParameter(key)?.addedLater)
        .map((key) => [key, jsonValue(state.facts.values.get(key))]),
    ),
    evidence: state.evidence
      .filter((entry) => entry.itemKey === definition.key)
      .map(({ kind, sha256: hash, url }) => ({ kind, sha256: hash, url }))
      .sort((a, b) => compareText(JSON.stringify(a), JSON.stringify(b))),
    ...partsCovered(definition, state),
    findings: definition.rules.map((rule) => {
      const finding = findings.get(rule.id)
      const concession = finding && concessionFor(finding, definition.key, state)
      return {
        rule: rule.id,
        version: rule.version,
        verdict: finding?.verdict ?? 'undetermined',
        concession: concession?.number ?? null,
      }
    }),
  }
}

/** Where its rules look at the parts of the works: each by its number, and the digest of its values. */
function partsCovered(
  definition: PlannedItem['definition'],
  { facts: { values, records } }: ProgrammeState,
): Readonly<Record<string, Readonly<Record<string, string>>>> {
  if (!readsParts(definition)) return {}
  const listed = partsNamedIn(values.get(partsList.key))
  const covered = records.parts.filter(({ code }) => listed.includes(code))
  return { parts: Object.fromEntries(covered.map(({ code, digest }) => [code, digest])) }
}

const readsParts = memo((definition: PlannedItem['definition']): boolean =>
  definition.rules.some((rule) =>
    Object.values(rule.reads).some((read) => readableOf(read).key === partsOfTheWorks.key),
  ),
)

/**
 * Everything `coverOf` looks at, by identity: when no part of it is another
 * object or value than before, the cover is the same and need not be made again.
 */
export function basisOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): readonly unknown[] {
  const { definition, tailoredOut } = item
  return [
    definition,
    tailoredOut?.reason,
    tailoredOut && tailoredOut.agreed !== null,
    state.facts.requirements,
    state.facts.today,
    state.evidence,
    state.concessions,
    // A permit for a number of boards is used up by what is soldered.
    state.concessions.some(({ permit, quantity }) => permit && quantity !== null) &&
      state.facts.records.byKind.get('soldering-run'),
    readsParts(definition) && state.facts.records.parts,
    ...parametersBehind(item).map((key) => state.facts.values.get(key)),
    ...definition.rules.map(({ id }) => findings.get(id)),
  ]
}

/** SHA-256 of a cover, in hex. */
export const digestOf = (signedContent: string): string => sha256(signedContent)

/** Keys of every parameter the item specifies or its rules read. */
export const parametersBehind = ({ definition }: PlannedItem): readonly string[] => keysBehind(definition)

const keysBehind = memo((definition: PlannedItem['definition']): readonly string[] => {
  const read = definition.rules.flatMap((rule) => Object.values(rule.reads).map(readableOf))
  const keys = [
    ...definition.parameters.map(({ key }) => key),
    ...read.filter(({ source }) => source === 'parameter').map(({ key }) => key),
  ]
  return [...new Set(keys)].sort(compareText)
})

/** Every limit the item holds or its rules read. */
export function limitsBehind({ definition }: PlannedItem): Limit[] {
  const read = definition.rules.flatMap(limitsRead)
  return [...new Map([...definition.limits, ...read].map((limit) => [limit.key, limit])).values()]
}

/** Parameters of the item that have no value and may not stay empty. */
export const emptyParameters = ({ definition }: PlannedItem, state: ProgrammeState) =>
  definition.parameters.filter(
    (parameter) => !state.facts.values.has(parameter.key) && !mayStayEmpty(parameter),
  )

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
