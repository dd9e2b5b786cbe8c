import { mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { rulingOn, type Limit } from '@/shared/plan/requirement'
import { readableOf } from '@/shared/rules/rule'
import type { Finding } from '@/shared/rules/finding'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import type { PlannedItem, ProgrammeState } from './programme-state'
import { concessionFor } from './concession'

/**
 * What an approval of an item covers, as canonical JSON: the item, the values
 * it specifies and its rules read, the limits in force, the evidence, and the
 * verdict of every finding with the version of the rule that gave it. Two
 * covers are the same agreement exactly when the texts are equal.
 */
export function coverOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): string {
  const { definition } = item
  return canonicalJson({
    item: definition.key,
    asks: definition.asks,
    approvers: [...definition.approvers],
    setAside: item.setAside ? { reason: item.setAside.reason, agreed: item.setAside.agreed !== null } : null,
    values: Object.fromEntries(
      parametersBehind(item).map((key) => [key, jsonValue(state.facts.values.get(key))]),
    ),
    limits: Object.fromEntries(
      limitsBehind(item).map((limit) => {
        const { value, authority, document } = rulingOn(limit, state.facts.requirements)
        return [limit.key, { value, authority, document }]
      }),
    ),
    evidence: state.evidence
      .filter((entry) => entry.itemKey === definition.key)
      .map(({ kind, sha256: hash, url }) => ({ kind, sha256: hash, url }))
      .sort((a, b) => compareText(JSON.stringify(a), JSON.stringify(b))),
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
  })
}

/**
 * Everything `coverOf` looks at, by identity: when no part of it is another
 * object or value than before, the cover is the same and need not be made again.
 */
export function basisOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): readonly unknown[] {
  const { definition, setAside } = item
  return [
    definition,
    setAside?.reason,
    setAside && setAside.agreed !== null,
    state.facts.requirements,
    state.facts.today,
    state.evidence,
    state.concessions,
    ...parametersBehind(item).map((key) => state.facts.values.get(key)),
    ...definition.rules.map(({ id }) => findings.get(id)),
  ]
}

/** SHA-256 of a cover, in hex. */
export const digestOf = (cover: string): string => sha256(cover)

const keysBehind = new WeakMap<PlannedItem['definition'], readonly string[]>()

/** Keys of every parameter the item specifies or its rules read. */
export function parametersBehind({ definition }: PlannedItem): readonly string[] {
  const keys = keysBehind.get(definition) ?? declaredBehind(definition)
  keysBehind.set(definition, keys)
  return keys
}

function declaredBehind(definition: PlannedItem['definition']): readonly string[] {
  const read = definition.rules.flatMap((rule) => Object.values(rule.reads).map(readableOf))
  const keys = [
    ...definition.parameters.map(({ key }) => key),
    ...read.filter(({ source }) => source === 'parameter').map(({ key }) => key),
  ]
  return [...new Set(keys)].sort(compareText)
}

/** Every limit the item holds or its rules read. */
export function limitsBehind({ definition }: PlannedItem): Limit[] {
  const read = definition.rules
    .flatMap((rule) => Object.values(rule.reads).map(readableOf))
    .filter((source): source is Limit => source.source === 'limit')
  return [...new Map([...definition.limits, ...read].map((limit) => [limit.key, limit])).values()]
}

/** Parameters of the item that have no value and may not stay empty. */
export const emptyParameters = ({ definition }: PlannedItem, state: ProgrammeState) =>
  definition.parameters.filter(
    (parameter) => !state.facts.values.has(parameter.key) && !mayStayEmpty(parameter),
  )

const jsonValue = (value: unknown): JsonValue =>
  value === undefined ? null : JSON.parse(JSON.stringify(value))

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
