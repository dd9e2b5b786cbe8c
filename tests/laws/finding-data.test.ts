import { describe, expect, test } from 'vitest'
import { concededData } from '@/shared/gate/conceded-data'
import { findingData, sameFinding } from '@/shared/gate/finding-data'
import { ALL_RULES } from '@/shared/catalogue/standard-plan'
import type { Facts } from '@/shared/rules/facts'
import type { Finding, Margin, Part } from '@/shared/rules/finding'
import { judge, type AnyRule } from '@/shared/rules/rule'
import { changedFacts, randomFrom } from './changed-facts'
import { FACTS_LOOKED_AT } from './facts-looked-at'
import { reworded } from './reworded'

/*
 * What a finding found is in its data; its sentences say nothing more. Looked
 * at over findings of every rule, on facts of which a few things are changed.
 */
const TRIES = Number(process.env['LAW_TRIES'] ?? 160)

interface Found {
  readonly facts: Facts
  readonly finding: Finding
}

const known = new Map<AnyRule, readonly Found[]>()
function foundBy(rule: AnyRule): readonly Found[] {
  const found = known.get(rule) ?? foundAgain(rule)
  known.set(rule, found)
  return found
}

function foundAgain(rule: AnyRule): Found[] {
  const random = randomFrom(ALL_RULES.indexOf(rule))
  return Array.from({ length: TRIES }).flatMap((_, at) => {
    const facts = changedFacts(random, rule, FACTS_LOOKED_AT[at % FACTS_LOOKED_AT.length]!)
    try {
      return [{ facts, finding: judge(rule, facts) }]
    } catch (error) {
      // Some of what is made up here no form would have let in.
      if (error instanceof RangeError) return []
      throw error
    }
  })
}

/** Several parts may weigh the same, and which of them speaks at the head decides nothing. */
function withoutSpeaker({ found, parts = [] }: Finding): string {
  const phrases = parts.map((part) => `${part.subject}: ${part.found.replace(/\.$/, '')}`)
  return phrases.reduce((text, phrase) => text.replace(phrase, '…'), found)
}

const fails = ({ verdict }: Part | Finding): boolean => verdict === 'fails'

/** What people read of a finding, as far as it says what was found. */
const sentences = (finding: Finding): string =>
  [
    withoutSpeaker(finding),
    ...(finding.parts ?? [])
      .filter((part) => !fails(finding) || fails(part))
      .map(({ subject, found }) => `${subject}: ${found}`),
  ].join('\n')

/** A rule that finds nothing to judge gives a reason only, and an undetermined one what is missing. */
const foundSomething = ({ verdict, margin, measured, parts }: Finding): boolean =>
  verdict !== 'undetermined' && Boolean(margin ?? measured ?? parts)

const outcomes = ({ parts = [] }: Finding): string =>
  parts.map(({ subject, verdict }) => `${subject} ${verdict}`).join()

/** A failing finding goes by the parts that fail, as a concession does; any other by all of them. */
const dataOf = (finding: Finding): string =>
  fails(finding) ? findingData(finding) : findingData({ ...finding, parts: finding.parts?.map(unpassed) })

/** `findingData` leaves out parts that pass. */
const unpassed = (part: Part): Part => ({ ...part, verdict: 'fails' })

describe.each(ALL_RULES.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  const found = foundBy(rule)

  test('what it says follows from its data', () => {
    const said = new Map<string, string>()
    for (const { finding } of found.filter((one) => foundSomething(one.finding))) {
      const data = `${dataOf(finding)} ${outcomes(finding)}`
      const words = said.get(data) ?? sentences(finding)
      said.set(data, words)
      expect(sentences(finding), data).toBe(words)
    }
  })

  test('what an undetermined one lacks is named, and follows from what a concession on it is for', () => {
    const said = new Map<string, string>()
    for (const { finding, facts } of found.filter(({ finding: one }) => one.verdict === 'undetermined')) {
      expect(finding.missing?.length).toBeGreaterThan(0)
      const data = concededData(finding, facts)
      // How many there are of what does not count is no other thing that is missing.
      const words = (finding.missing ?? []).join(' ').replace(/[0-9.]+/g, '#')
      const known = said.get(data) ?? words
      said.set(data, known)
      expect(words, data).toBe(known)
      expect(concededData(reworded(finding), facts)).toBe(data)
    }
  })

  test('another wording is no other finding', () => {
    for (const { finding } of found) {
      expect(findingData(reworded(finding))).toBe(findingData(finding))
      expect(sameFinding(finding, reworded(finding))).toBe(true)
    }
  })

  test('a part is named in words of people, or its data says what it is about', () => {
    const worded = found.flatMap(({ finding, facts }) =>
      (finding.parts ?? [])
        .filter(({ subject, about }) => !about && !isStated(subject, facts))
        .map(({ subject }) => subject),
    )
    expect([...new Set(worded)]).toEqual([])
  })

  test('the last bits of a number are no other finding, its seventh figure is', () => {
    for (const { finding } of found) {
      const { margin } = finding
      if (!margin || !Number.isFinite(margin.found) || margin.found === 0) continue
      if (Math.abs(margin.found) < Math.abs(margin.limit) / 10) continue
      const by = (share: number): Finding => ({
        ...finding,
        margin: { ...margin, found: rounded(margin.found) * (1 + share) } satisfies Margin,
      })
      expect(findingData(by(1e-14))).toBe(findingData(by(0)))
      expect(findingData(by(1e-6))).not.toBe(findingData(by(0)))
    }
  })
})

/** In the middle of what nine figures tell apart. */
const rounded = (value: number): number => Number(value.toPrecision(8))

/** Whether somebody wrote these words into the specification or the records; readings name no part. */
const isStated = (text: string, held: unknown): boolean => {
  if (typeof held === 'string') return held === text
  if (held === null || typeof held !== 'object') return false
  if (held instanceof Map) return [...held].some((entry) => isStated(text, entry))
  return Object.entries(held).some(([name, inner]) => name !== 'readings' && isStated(text, inner))
}

/** Rules that warn and never fail, and one that fails after ten lots on tightened inspection only. */
const NEVER_FAILING_HERE = [
  'preferred-drills',
  'process-economy',
  'inspection-state',
  'bath-trend',
  'defect-direction',
]

test('of every other rule, a failing finding was looked at', () => {
  const failing = ALL_RULES.filter((rule) => foundBy(rule).some(({ finding }) => fails(finding)))
  const others = ALL_RULES.filter((rule) => !failing.includes(rule)).map(({ id }) => id)
  expect(others).toEqual(NEVER_FAILING_HERE)
})
