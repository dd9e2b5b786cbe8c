import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ALL_RULES, findParameter } from '@/shared/catalogue/standard-plan'
import { flagParameter } from '@/shared/plan/parameter'
import { firstValues } from '@/shared/rules/first-values'
import { optional, readableOf, rule, type AnyRule } from '@/shared/rules/rule'

/*
 * Source of the step: the greedy rule for covering problems, as in V. Chvátal, "A greedy heuristic for the set-covering
 * problem", Mathematics of Operations Research 4 (1979), from memory; counted here again, straight from the declarations.
 */

/** How many of the rules have every value they cannot do without. */
const openWith = (rules: readonly AnyRule[], stated: ReadonlySet<string>): number =>
  rules.filter(({ reads }) =>
    Object.values(reads).every(
      (read) =>
        read.source === 'optional' ||
        (read.source !== 'records' && (read.source !== 'parameter' || stated.has(read.key))),
    ),
  ).length

const keysOf = (rules: readonly AnyRule[]): string[] => [
  ...new Set(
    rules.flatMap(({ reads }) =>
      Object.values(reads)
        .map((read) => readableOf(read))
        .filter(({ source }) => source === 'parameter')
        .map(({ key }) => key),
    ),
  ),
]

const values = ['a', 'b', 'c', 'd', 'e'].map((key) =>
  flagParameter({ key, label: key, help: '', owner: 'design' }),
)
const anyRules = fc.array(
  fc.record({
    wants: fc.subarray(values, { minLength: 1, maxLength: 3 }),
    likes: fc.subarray(values, { maxLength: 2 }),
  }),
  { minLength: 1, maxLength: 8 },
)
const rulesOf = (read: readonly { wants: typeof values; likes: typeof values }[]): AnyRule[] =>
  read.map(({ wants, likes }, index) =>
    rule({
      id: `rule-${index}`,
      title: `Rule ${index}`,
      why: '',
      formula: '',
      stage: 'specification',
      version: 1,
      reads: Object.fromEntries([
        ...wants.map((value) => [`wants-${value.key}`, value] as const),
        ...likes.map((value) => [`likes-${value.key}`, optional(value)] as const),
      ]),
      judge: () => ({ verdict: 'meets', found: '', limit: '', working: [], sources: [] }),
    }),
  )

function holdsFor(rules: readonly AnyRule[], already: readonly string[] = []): void {
  const stated = new Set(already)
  for (const { parameter, opens } of firstValues(rules, already)) {
    const before = openWith(rules, stated)
    const gain = (key: string) => openWith(rules, new Set([...stated, key])) - before
    expect(gain(parameter), parameter).toBe(opens.length)
    expect(opens.length).toBeGreaterThan(0)
    for (const other of keysOf(rules)) expect(gain(other), other).toBeLessThanOrEqual(opens.length)
    stated.add(parameter)
  }
  // The list ends where no value alone would open another.
  for (const other of keysOf(rules))
    expect(openWith(rules, new Set([...stated, other]))).toBe(openWith(rules, stated))
}

describe('a listed value never opens fewer checks than an unlisted one would at its step', () => {
  test('in the standard plan', () => holdsFor(ALL_RULES))
  test('whatever rules read', () =>
    fc.assert(
      fc.property(anyRules, fc.subarray(['a', 'b', 'c']), (read, already) =>
        holdsFor(rulesOf(read), already),
      ),
    ))
})

test('a worked case: two checks on one value come before one check on two', () => {
  const [a, b, c] = values
  const rules = rulesOf([
    { wants: [a!], likes: [] },
    { wants: [b!], likes: [] },
    { wants: [b!], likes: [c!] },
    { wants: [a!, c!], likes: [] },
  ])
  expect(firstValues(rules)).toEqual([
    { parameter: 'b', opens: ['rule-1', 'rule-2'] },
    { parameter: 'a', opens: ['rule-0'] },
    { parameter: 'c', opens: ['rule-3'] },
  ])
})

test('of the standard plan they are a short list, and values of its own', () => {
  const found = firstValues(ALL_RULES)
  expect(found.length).toBeGreaterThan(10)
  expect(found.length).toBeLessThan(40)
  for (const { parameter } of found) expect(findParameter(parameter), parameter).toBeDefined()
})
