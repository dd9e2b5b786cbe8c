import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { confirmableBy, confirmationRefusal } from '@/shared/gate/confirmation'
import { foundText } from '@/shared/gate/found-then'
import { itemStateFor, judgeProgramme } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { rule } from '@/shared/rules/rule'
import { coat, signedUpTo, width } from '@/tests/rules/gate/small-programme'

/* What "substantively the same" is, is our own decision (docs/decisions/0016); the cases follow it. */

const LIMIT = 5
const marginRule = rule({
  id: 'test-coat-margin',
  title: 'Coat against its limit',
  why: 'A thin coat does not last.',
  formula: 'coat ≥ 5 µm',
  stage: 'specification',
  version: 1,
  reads: { coat },
  judge: ({ coat: found }) => ({
    verdict: found >= LIMIT + 1 ? 'meets' : found >= LIMIT ? 'marginal' : 'fails',
    found: `The coat is ${found} µm.`,
    margin: { found, limit: LIMIT, unit: 'µm', direction: 'at least', guardBand: 1 },
    limit: 'at least 5 µm',
    working: [],
    sources: [],
  }),
})

/** The small programme with a rule that has a margin, its first item approved at 8 µm and a width of 1 mm. */
const small = signedUpTo('specification')
const planned = small.items.map((item) =>
  item.definition.key === 'finish'
    ? { ...item, definition: { ...item.definition, parameters: [coat, width], rules: [marginRule] } }
    : item,
)
const asPlanned: ProgrammeState = { ...small, items: planned, approvals: [] }
const judgedThen = judgeProgramme(asPlanned)
const stateThen = itemStateFor(judgedThen, 'finish')!
const approval = {
  ...small.approvals.find(({ itemKey, department }) => itemKey === 'finish' && department === 'design')!,
  digest: stateThen.digest,
  signedContent: stateThen.signedContent,
  found: foundText(stateThen.item, judgedThen.findings),
}

function refusedWith(values: Readonly<Record<string, number>>, over: Partial<ProgrammeState> = {}) {
  const all = new Map([...asPlanned.facts.values, ...Object.entries(values)])
  const state = {
    ...asPlanned,
    approvals: [approval],
    facts: { ...asPlanned.facts, values: all },
    ...over,
  }
  const judged = judgeProgramme(state)
  const item = itemStateFor(judged, 'finish')!
  return {
    lapsed: item.status === 'lapsed',
    refused: confirmationRefusal(approval, item, judged.findings),
    by: (personId: string) => confirmableBy(personId, 'design', item, judged.findings),
  }
}

describe('a lapsed approval may be confirmed', () => {
  test('when the value is another and its margin is no worse', () => {
    const { lapsed, refused, by } = refusedWith({ [coat.key]: 9 })
    expect(lapsed).toBe(true)
    expect(refused).toBeUndefined()
    expect(by('design')).toBe(approval)
  })
  test('when the margin is worse by less than the limit’s third figure shows', () =>
    expect(refusedWith({ [coat.key]: 7.996 }).refused).toBeUndefined())
  test('by nobody but who gave it', () =>
    expect(refusedWith({ [coat.key]: 9 }).by('quality')).toBeUndefined())
})

describe('it must be given again', () => {
  test('when the margin is worse, with what it was and is', () =>
    expect(refusedWith({ [coat.key]: 7.5 }).refused).toBe('test-coat-margin has less margin: 3 µm → 2.5 µm.'))
  test('when the verdict is another', () =>
    expect(refusedWith({ [coat.key]: 5.5 }).refused).toMatch(/its verdict.* is another/))
  test('when a value changed that no finding of the item tells of', () =>
    expect(refusedWith({ [coat.key]: 9, [width.key]: 2 }).refused).toBe(
      'No finding of the item tells of test-width, which changed.',
    ))
  test('when evidence was attached since', () => {
    const entry = {
      id: 'e',
      itemKey: 'finish',
      kind: 'drawing',
      note: '',
      sha256: null,
      fileName: null,
      url: 'https://example.invalid/',
      addedById: 'd',
      addedByName: 'D',
      at: '2026-02-02T08:00:00.000Z',
    }
    expect(refusedWith({}, { evidence: [entry] }).refused).toBe('Its evidence is not the same.')
  })
  test('when it was signed before margins were kept', () =>
    expect(confirmationRefusal({ ...approval, found: null }, stateThen, judgedThen.findings)).toMatch(
      /before margins were kept/,
    ))
})

test('law: at the same verdict a coat may be confirmed exactly when it is thicker, or thinner by a rounding', () => {
  fc.assert(
    fc.property(fc.double({ min: 6, max: 50, noNaN: true }), (thickness) => {
      fc.pre(Math.abs(thickness - 7.995) > 1e-6)
      expect(refusedWith({ [coat.key]: thickness }).refused === undefined).toBe(thickness > 7.995)
    }),
  )
})
