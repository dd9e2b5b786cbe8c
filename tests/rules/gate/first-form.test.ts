import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { findLimit, findParameter } from '@/shared/catalogue/standard-plan'
import type { ItemDefinition } from '@/shared/catalogue/item'
import type { SignedContentShape } from '@/shared/gate/signed-content-difference'
import { signedContentOf } from '@/shared/gate/signed-content'
import { hasFirstForm } from '@/shared/gate/first-form-content'
import { gateStatesOf } from '@/shared/gate/gate'
import type { PlannedItem, ProgrammeState } from '@/shared/gate/programme-state'
import { itemStateOf } from '@/shared/gate/item-status'
import type { Authority, Limit } from '@/shared/plan/requirement'
import type { Finding, Verdict } from '@/shared/rules/finding'
import { revivedState } from '../demo/demo-state'

/*
 * A programme as version 0.1 stored it, with every approval and all four gates
 * signed in the first form of covers. It is judged as it was judged then, so that
 * the forms are compared and not the rules, which may have changed since.
 */
const stored = revivedState(readFileSync(new URL('first-form/lx-41.json', import.meta.url), 'utf8'))

const contentSigned = (key: string): SignedContentShape => {
  const approval = stored.approvals.findLast(({ itemKey }) => itemKey === key)
  if (!approval) throw new Error(`${key} was not approved.`)
  return JSON.parse(approval.signedContent) as SignedContentShape
}

/** The item with what it specified, was limited and judged by when it was signed. */
function asSigned(item: PlannedItem): PlannedItem {
  const { values, limits, findings } = contentSigned(item.definition.key)
  const definition: ItemDefinition = {
    ...item.definition,
    // Every standard item asked its first question then.
    version: 1,
    parameters: Object.keys(values).map((key) => {
      const parameter = findParameter(key)
      if (!parameter) throw new Error(`There is no parameter ${key} any more.`)
      return parameter
    }),
    limits: Object.keys(limits).map((key) => {
      const limit = findLimit(key)
      if (!limit) throw new Error(`There is no limit ${key} any more.`)
      const { value, authority } = limits[key]!
      const stated = stored.facts.requirements.some((requirement) => requirement.limit === key)
      const ofThen = stated ? limit.byDefault.authority : (authority as Authority)
      return { ...limit, byDefault: { ...limit.byDefault, value, authority: ofThen } }
    }),
    rules: findings.map(({ rule, version }) => ({ ...NO_RULE, id: rule, version })),
  }
  return { ...item, definition }
}
const NO_RULE: Omit<ItemDefinition['rules'][number], 'id' | 'version'> = {
  title: '',
  why: '',
  formula: '',
  stage: 'specification',
  reads: {},
  judge: () => ({ verdict: 'meets', found: '', limit: '', working: [], sources: [] }),
}

const findingsSigned = new Map(
  stored.items.flatMap(({ definition }) =>
    contentSigned(definition.key).findings.map(({ rule, version, verdict }): [string, Finding] => [
      rule,
      { rule, version, verdict: verdict as Verdict, found: '', limit: '', working: [], sources: [] },
    ]),
  ),
)

const stateThen: ProgrammeState = { ...stored, items: stored.items.map(asSigned) }

/** Every word of the program that an item and its limits hold, put otherwise. */
const rewordedItem = (item: PlannedItem): PlannedItem => ({
  ...item,
  definition: {
    ...item.definition,
    title: 'Something else',
    asks: 'Put otherwise?',
    limits: item.definition.limits.map(rewordedLimit),
  },
})
const rewordedLimit = (limit: Limit): Limit => ({
  ...limit,
  label: 'Something else',
  byDefault: {
    ...limit.byDefault,
    from: { ...limit.byDefault.from, cite: 'The same source, cited otherwise' },
  },
})

const itemsOf = (state: ProgrammeState, findings: ReadonlyMap<string, Finding>) =>
  state.items.map((item) => itemStateOf(item, state, findings))

function held(state: ProgrammeState, findings: ReadonlyMap<string, Finding> = findingsSigned) {
  const items = itemsOf(state, findings)
  const gates = gateStatesOf(state, items, findings)
  return {
    lapsed: items.filter(({ approvals }) => approvals.some(({ holds }) => !holds)).map(keyOf),
    gates: gates.map(({ signatures }) => signatures.every(({ holds }) => holds)),
  }
}
const keyOf = ({ item }: { readonly item: PlannedItem }): string => item.definition.key

const reworded: ProgrammeState = { ...stateThen, items: stateThen.items.map(rewordedItem) }

describe('what was signed in the first form', () => {
  test('is in that form, all of it', () => {
    expect(stored.approvals.length).toBe(91)
    expect(stored.gateSignatures.length).toBe(12)
    expect(
      [...stored.approvals, ...stored.gateSignatures].filter(
        ({ signedContent }) => !hasFirstForm(signedContent),
      ),
    ).toEqual([])
  })

  test('holds while nothing changed', () => {
    expect(held(stateThen)).toEqual({ lapsed: [], gates: [true, true, true, true] })
  })

  test('holds whatever the program’s words have become', () => {
    expect(held(reworded)).toEqual({ lapsed: [], gates: [true, true, true, true] })
  })

  test('holds where a finding that met is now said not to apply', () => {
    const turned = new Map(
      [...findingsSigned].map(([rule, finding]) => [
        rule,
        finding.verdict === 'meets' ? ({ ...finding, verdict: 'not applicable' } as const) : finding,
      ]),
    )
    expect(held(stateThen, turned)).toEqual({ lapsed: [], gates: [true, true, true, true] })
  })

  test('lapses with the gates from there on when a value changes, and holds again when it comes back', () => {
    const values = new Map(stateThen.facts.values).set('tip-temperature-target', 320)
    const changed = { ...stateThen, facts: { ...stateThen.facts, values } }
    expect(held(changed)).toEqual({ lapsed: ['irons'], gates: [true, true, false, false] })
    expect(held(stateThen).lapsed).toEqual([])
  })

  test.each([
    ['another rule version', (finding: Finding) => ({ ...finding, version: finding.version + 1 })],
    ['a finding that turns', (finding: Finding) => ({ ...finding, verdict: 'marginal' as const })],
  ])('lapses by %s', (_, alter) => {
    const [rule] = contentSigned('irons').findings
    const definition = (item: PlannedItem) =>
      item.definition.key === 'irons'
        ? {
            ...item,
            definition: {
              ...item.definition,
              rules: item.definition.rules.map((one) =>
                one.id === rule?.rule ? { ...one, version: alter(findingsSigned.get(one.id)!).version } : one,
              ),
            },
          }
        : item
    const altered = new Map(findingsSigned).set(rule!.rule, alter(findingsSigned.get(rule!.rule)!))
    expect(held({ ...stateThen, items: stateThen.items.map(definition) }, altered).lapsed).toEqual(['irons'])
  })

  test('lapses when what the item settles becomes something else', () => {
    const items = stateThen.items.map((item) =>
      keyOf({ item }) === 'irons' ? { ...item, definition: { ...item.definition, version: 2 } } : item,
    )
    expect(held({ ...stateThen, items })).toEqual({ lapsed: ['irons'], gates: [true, true, false, false] })
  })
})

describe('what is signed now', () => {
  const signedContent = (state: ProgrammeState) =>
    state.items.map((item) => signedContentOf(item, state, findingsSigned))

  test('holds none of the program’s words', () => {
    expect(signedContent(reworded)).toEqual(signedContent(stateThen))
  })

  test('holds the words of people: what an added item asks, a stated document', () => {
    const [first, ...others] = stateThen.items
    const added = { ...stateThen, items: [{ ...first!, added: true }, ...others] }
    expect(signedContent({ ...added, items: added.items.map(rewordedItem) })[0]).not.toBe(
      signedContent(added)[0],
    )
    const [limit] = Object.keys(contentSigned('irons').limits)
    const stated = (document: string): ProgrammeState => ({
      ...stateThen,
      facts: {
        ...stateThen.facts,
        requirements: [
          {
            id: 'r',
            limit: limit!,
            authority: 'customer',
            document,
            clause: '',
            value: 1,
            relaxes: false,
            reason: '',
            lesson: null,
          },
        ],
      },
    })
    expect(signedContent(stated('CS-100'))).not.toEqual(signedContent(stated('CS-200')))
  })
})
