import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  ruleDifferences,
  undecided,
  type OwnKept,
  type RuleDifference,
  type RuleTaken,
} from '@/shared/company-rules/rule-difference'

/* What follows from the words: a programme that takes everything over says what the works say, and nothing is decided twice. */

interface Rule {
  readonly id: string
  readonly replaces: string | null
  readonly withdrawn: object | null
}

/** Rules one after another: each new, or in place of one that stood; some withdrawn without another. */
const rulesArb: fc.Arbitrary<Rule[]> = fc
  .array(fc.record({ in: fc.option(fc.nat()), gone: fc.boolean() }), { maxLength: 12 })
  .map((steps) =>
    steps.reduce<Rule[]>((rules, { in: at, gone }, index) => {
      const standing = rules.filter(({ withdrawn }) => withdrawn === null)
      const replaced = at === null ? undefined : standing[at % Math.max(1, standing.length)]
      return [
        ...rules.map((rule) => (rule === replaced ? { ...rule, withdrawn: {} } : rule)),
        { id: `rule ${index}`, replaces: replaced?.id ?? null, withdrawn: gone ? {} : null },
      ]
    }, []),
  )

interface Case {
  readonly rules: readonly Rule[]
  readonly taken: readonly RuleTaken[]
  readonly kept: readonly OwnKept[]
}

/** Any rules, of which a programme took some over at one time or another and kept its own against some. */
const caseArb: fc.Arbitrary<Case> = rulesArb.chain((rules) =>
  fc.record({
    rules: fc.constant(rules),
    taken: fc
      .subarray(rules)
      .map((some) => some.map(({ id }) => ({ requirement: `requirement of ${id}`, rule: id }))),
    kept: fc.subarray(rules).chain((some) =>
      fc.tuple(...some.map(() => fc.constantFrom('stated' as const, 'withdrawn' as const))).map((standings) =>
        some.map(({ id }, index) => ({
          rule: id,
          standing: standings[index] ?? 'stated',
          reason: 'Ours is older.',
          by: 'Somebody',
          at: '2026-01-01T00:00:00.000Z',
        })),
      ),
    ),
  }),
)

type Difference = RuleDifference<Rule, OwnKept>

/** The requirements after one difference was taken over. */
const afterTaking = (taken: readonly RuleTaken[], { rule, standing, goes }: Difference): RuleTaken[] => [
  ...taken.filter((own) => !goes.includes(own)),
  ...(standing === 'stated' ? [{ requirement: `requirement of ${rule.id}`, rule: rule.id }] : []),
]

describe('the difference to the company rules', () => {
  test('is gone once everything was taken over, in whatever order', () => {
    fc.assert(
      fc.property(
        caseArb,
        fc.array(fc.nat(), { minLength: 30, maxLength: 30 }),
        ({ rules, taken, kept }, order) => {
          let now = taken
          for (const pick of order) {
            const differences = ruleDifferences(rules, now, kept)
            const one = differences[pick % Math.max(1, differences.length)]
            if (!one) break
            const after = afterTaking(now, one)
            // Each decision leaves one difference less, and makes no other.
            expect(ruleDifferences(rules, after, kept)).toHaveLength(differences.length - 1)
            now = after
          }
          expect(ruleDifferences(rules, now, kept)).toEqual([])
          expect(now.map(({ rule }) => rule).sort()).toEqual(
            rules
              .filter(({ withdrawn }) => withdrawn === null)
              .map(({ id }) => id)
              .sort(),
          )
        },
      ),
    )
  })

  test('leaves nothing to decide once a programme keeps its own against each', () => {
    fc.assert(
      fc.property(caseArb, ({ rules, taken, kept }) => {
        const own = ruleDifferences(rules, taken, kept).map(({ rule, standing }) => ({
          rule: rule.id,
          standing,
          reason: 'Ours is tried.',
          by: 'Somebody',
          at: '2026-01-02T00:00:00.000Z',
        }))
        const after = ruleDifferences(rules, taken, [...kept, ...own])
        expect(undecided(after)).toEqual([])
        expect(after).toHaveLength(own.length)
      }),
    )
  })

  test('names every rule in force that was not laid and every layer that is asked no more, each once', () => {
    fc.assert(
      fc.property(caseArb, ({ rules, taken, kept }) => {
        const differences = ruleDifferences(rules, taken, kept)
        const stated = differences.filter(({ standing }) => standing === 'stated').map(({ rule }) => rule.id)
        expect(stated).toEqual(
          rules
            .filter(({ id, withdrawn }) => withdrawn === null && !taken.some(({ rule }) => rule === id))
            .map(({ id }) => id),
        )
        const goes = differences.flatMap((one) => one.goes.map(({ requirement }) => requirement))
        const askedNoMore = taken.filter(({ rule }) =>
          rules.some(({ id, withdrawn }) => id === rule && withdrawn),
        )
        expect([...goes].sort()).toEqual(askedNoMore.map(({ requirement }) => requirement).sort())
      }),
    )
  })
})
