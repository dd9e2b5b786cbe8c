import { findRule } from '@/shared/catalogue/standard-plan'
import { governingRequirement } from '@/shared/plan/requirement'
import type { Lot } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import type { Finding } from '@/shared/rules/finding'
import { limitsRead } from '@/shared/rules/limits-read'
import { readableOf, type AnyRule, type Readable } from '@/shared/rules/rule'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import { findingData } from './finding-data'
import { jsonValue } from './json-value'

/**
 * What a concession is for, as canonical JSON. A failing finding says it all in
 * its own data. An undetermined one found little, so what it was looked for in
 * is added: the specified values and limits that the rule reads, and the lots
 * that it could not judge with what is on record of them, or how many records
 * it read. When one of these is
 * another, another thing may be missing, and the concession is for that no more.
 */
export function concededData(finding: Finding, facts: Facts): string {
  const own = findingData(finding)
  const rule = finding.verdict === 'undetermined' ? findRule(finding.rule) : undefined
  return rule ? canonicalJson({ ...JSON.parse(own), soughtIn: soughtIn(finding, rule, facts) }) : own
}

function soughtIn(finding: Finding, rule: AnyRule, facts: Facts): JsonValue {
  const reads = Object.values(rule.reads).map(readableOf)
  const values = reads
    .filter(({ source }) => source === 'parameter')
    .map(({ key }) => [key, jsonValue(facts.values.get(key))])
  const limits = limitsRead(rule).map((limit) => {
    const { value, authority, kind } = governingRequirement(limit, facts.requirements)
    return [limit.key, value, authority, kind]
  })
  const readsLots = reads.some((read) => read.source === 'records' && read.part.is === 'lots')
  return {
    specified: sha256(canonicalJson({ values, limits } as JsonValue)),
    lots: readsLots ? lotsSought(finding, facts.records.lots).map(lotSought) : [],
    records: readsLots ? {} : Object.fromEntries(reads.flatMap((read) => countOf(read, facts))),
  }
}

/** How many records of a kind there are, or inspections. Logs grow by the hour, and their parts say what was measured. */
function countOf(read: Readable, { records }: Facts): [string, number][] {
  if (read.source !== 'records' || (read.part.is !== 'records' && read.part.is !== 'inspections')) return []
  const found = read.from(records)
  return Array.isArray(found) ? [[read.key, found.length]] : []
}

/** The lots that undetermined parts name, by their codes or by what they are lots of; where no part does, all. */
function lotsSought({ parts = [] }: Finding, lots: readonly Lot[]): readonly Lot[] {
  const names = new Set(
    parts
      .filter(({ verdict }) => verdict === 'undetermined')
      .flatMap(({ subject, about }) => [subject, about?.['lot'] ?? about?.['part'] ?? '']),
  )
  return parts.length === 0 ? lots : lots.filter(({ code, part }) => names.has(code) || names.has(part))
}

/** As much of a lot as tells whether the same is still missing of it. */
const lotSought = ({ code, supplierResult, disposition, tests }: Lot): JsonValue => ({
  code,
  supplierResult,
  disposition: disposition?.verdict ?? null,
  tests: tests.map(({ id, testedOn, instrumentId, conditions }) => ({
    id,
    testedOn,
    instrumentId,
    conditions: jsonValue(conditions),
  })),
})
