import { describe, expect, test } from 'vitest'
import { compareOptions } from '@/shared/gate/option-outcome'
import { adoptionRefusal, changesOf, comparedValues, movedSince } from '@/shared/gate/option-study'
import { alternativeOf, type OptionAlternative } from '@/shared/gate/option-alternative'
import { judgeProgramme } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { annualVolume, serviceYears } from '@/shared/plan/parameters/programme'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { coat, signedUpTo, width } from './small-programme'

/* The coat is 8 µm, of which one rule asks at least 5, and another says how long it may lie; nothing reads the width. */
const state = signedUpTo('control')
const option = (name: string, values: Readonly<Record<string, JsonValue>>): OptionAlternative =>
  alternativeOf({ name, note: '', values, costPerBoard: 0, costOnce: 0 })
const compare = (options: readonly OptionAlternative[], on: ProgrammeState = state) =>
  compareOptions(on, judgeProgramme(on), options)

describe('alternatives side by side', () => {
  const { parameters, rules, outcomes } = compare([
    option('As it is', { [coat.key]: 8 }),
    option('Thinner', { [coat.key]: 6 }),
    option('Too thin', { [coat.key]: 3 }),
  ])

  test('compare what any of them names', () => {
    expect(parameters).toEqual([coat.key])
  })

  test('show the rules that read it, those first that turn', () => {
    expect(rules.map(({ rule, effect }) => [rule.id, effect])).toEqual([
      ['test-coat-least', 'turns'],
      ['test-storage', 'moves'],
    ])
  })

  test('are judged each with its own values', () => {
    const verdicts = outcomes.map(({ findings }) => findings.get('test-coat-least')?.verdict)
    expect(verdicts).toEqual(['meets', 'meets', 'fails'])
    expect(outcomes[1]?.findings.get('test-coat-least')?.found).toBe('The coat is 6 µm.')
    expect(outcomes[2]?.findings.get('test-coat-least')?.remedy?.message).toBe('Order 5 µm.')
  })

  test('undo nothing where they are what stands, and else every signature on the value', () => {
    const approvals = outcomes.map(({ preview }) => preview.approvals.map(({ itemKey }) => itemKey))
    expect(approvals).toEqual([
      [],
      ['finish', 'finish', 'store', 'store'],
      ['finish', 'finish', 'store', 'store'],
    ])
    expect(outcomes.map(({ preview }) => preview.gates.length)).toEqual([0, 3, 3])
  })

  test('of a value that no rule reads show no rule, and still what lapses', () => {
    const wide = compare([option('Narrow', { [width.key]: 1 }), option('Wide', { [width.key]: 2 })])
    expect(wide.rules).toEqual([])
    expect(wide.outcomes[1]?.preview.approvals.map(({ itemKey }) => itemKey)).toEqual([
      'conductors',
      'conductors',
    ])
  })

  test('leave out the rules of an item that is set aside', () => {
    const by = { byId: 'q', byName: 'Q', at: '2026-02-02T08:00:00.000Z' }
    const aside = {
      reason: 'Not here.',
      proposedById: 'd',
      proposedByName: 'D',
      proposedAt: by.at,
      agreed: by,
    }
    const without: ProgrammeState = {
      ...state,
      items: state.items.map((item) =>
        item.definition.key === 'store' ? { ...item, tailoredOut: aside } : item,
      ),
    }
    expect(compare([option('Thin', { [coat.key]: 6 })], without).rules.map(({ rule }) => rule.id)).toEqual([
      'test-coat-least',
    ])
  })

  test('judge several values of one alternative together', () => {
    const [both] = compare([option('Both', { [coat.key]: 3, [width.key]: 2 })]).outcomes
    expect([...(both?.changes.keys() ?? [])].sort()).toEqual([coat.key, width.key])
    expect(both?.preview.approvals.map(({ itemKey }) => itemKey)).toContain('conductors')
    expect(both?.findings.get('test-coat-least')?.verdict).toBe('fails')
  })
})

describe('the values a study keeps', () => {
  const today = new Map<string, unknown>([
    ['finish', 'tin'],
    ['rows', [{ a: 1, b: 2 }]],
  ])

  test('are those that differ from today in some alternative, written down for each', () => {
    expect(
      comparedValues(
        [{ finish: 'tin', rows: [{ b: 2, a: 1 }] }, { finish: 'silver', rows: [{ a: 1, b: 2 }] }, {}],
        today,
      ),
    ).toEqual([{ finish: 'tin' }, { finish: 'silver' }, { finish: 'tin' }])
  })

  test('hold a first value, and nothing for an alternative that leaves it open', () => {
    expect(comparedValues([{ new: 3 }, {}], today)).toEqual([{ new: 3 }, {}])
  })

  test('stand while today’s values equal them, whatever the order of their parts', () => {
    const adopted = option('A', { finish: 'tin', rows: [{ b: 2, a: 1 }] })
    expect(movedSince(adopted, today)).toEqual([])
    expect(movedSince(adopted, new Map([...today, ['finish', 'silver']]))).toEqual(['finish'])
    expect([...changesOf(option('B', { finish: 'silver' }), today)]).toEqual([['finish', 'silver']])
  })
})

describe('who adopts', () => {
  const item = { title: 'Frame', owner: 'design' as const }
  const by = (...departments: ('design' | 'production' | 'quality')[]) => ({ leads: false, departments })
  const changed = (...keys: string[]) => new Map(keys.map((key) => [key, 1]))

  test('the owner of each value that changes', () => {
    expect(
      adoptionRefusal({ item, changes: changed(serviceYears.key), limits: [] }, by('design')),
    ).toBeUndefined()
    expect(
      adoptionRefusal({ item, changes: changed(serviceYears.key), limits: [] }, by('production')),
    ).toContain('belongs to design')
    expect(
      adoptionRefusal(
        { item, changes: changed(serviceYears.key, annualVolume.key), limits: [] },
        by('design'),
      ),
    ).toContain('Boards per year belongs to production')
    expect(
      adoptionRefusal(
        { item, changes: changed(serviceYears.key, annualVolume.key), limits: [] },
        by('design', 'production'),
      ),
    ).toBeUndefined()
  })
  test('the item’s owner where nothing changes', () => {
    expect(adoptionRefusal({ item, changes: changed(), limits: [] }, by('design'))).toBeUndefined()
    expect(adoptionRefusal({ item, changes: changed(), limits: [] }, by('quality'))).toContain(
      'Frame belongs to design',
    )
  })
  test('the lead, always', () => {
    expect(
      adoptionRefusal(
        { item, changes: changed(annualVolume.key), limits: [] },
        { leads: true, departments: [] },
      ),
    ).toBeUndefined()
  })
  test('a limit, those who may state one outside a study; the lead by their department', () => {
    const stating = { item, changes: changed(), limits: [{ limit: 'magnification-most' }] }
    expect(adoptionRefusal(stating, by('quality'))).toBeUndefined()
    expect(adoptionRefusal(stating, by('production'))).toContain('is a limit')
    expect(adoptionRefusal(stating, { leads: true, departments: ['production'] })).toContain('is a limit')
  })
})
