import { describe, expect, test } from 'vitest'
import type { Actor } from '@/shared/actor'
import { deskEntriesOf, valuesForLaterOf } from '@/shared/desk/desk-of'
import { deskKey } from '@/shared/desk/desk-entry'
import { judgeProgramme } from '@/shared/gate/judgement'
import type { ActionEntry, ProgrammeState } from '@/shared/gate/programme-state'
import type { Department } from '@/shared/plan/department'
import { coat, signedUpTo, width } from '@/tests/rules/gate/small-programme'
import { inspection } from '@/tests/rules/record-builder'
import { UNANSWERED } from '@/tests/rules/gate/unanswered'

/* What lies on whose desk is this project's own decision, with no source outside it. */

const of = (department: Department, personId: string = department): Actor => ({
  personId,
  name: personId,
  departments: [department],
  leads: false,
  auditor: false,
  administrator: false,
})
const deskOf = (actor: Actor, state: ProgrammeState) => deskEntriesOf(actor, state, judgeProgramme(state))

const untouched: ProgrammeState = { ...signedUpTo('specification'), approvals: [], gateSignatures: [] }
const withValues = (values: readonly (readonly [string, unknown])[]): ProgrammeState => ({
  ...untouched,
  facts: { ...untouched.facts, values: new Map(values) },
})
const asked: ActionEntry = {
  id: 'a',
  number: 4,
  itemKey: 'finish',
  from: 'design',
  to: 'production',
  kind: 'cost',
  question: 'What does it cost?',
  dueOn: '2026-03-09',
  askedById: 'design',
  askedByName: 'D',
  askedAt: '2026-03-01T00:00:00.000Z',
  ...UNANSWERED,
}

describe('own work', () => {
  test('is whatever fails, told with what was found, and leads to the finding', () => {
    const state = withValues([
      [coat.key, 3],
      [width.key, 1],
    ])
    expect(deskOf(of('design'), state)).toContainEqual(
      expect.objectContaining({
        bearing: 'own work',
        verb: 'mend',
        message: expect.stringContaining('The coat is 3 µm.'),
        place: { kind: 'finding', rule: 'test-coat-least' },
      }),
    )
    expect(deskOf(of('production'), state).filter(({ verb }) => verb === 'mend')).toEqual([])
  })

  test('of a later stage waits for its gate, and of the stage at work does not', () => {
    const design = of('design')
    const messages = (state: ProgrammeState) =>
      deskOf(design, state)
        .filter(({ bearing }) => bearing === 'own work')
        .map(({ place }) => place)
    const early = withValues([[width.key, 1]])
    // The item of the control stage reads the coat, which nobody specified; its gate is far.
    expect(messages(early)).not.toContainEqual({ kind: 'item', item: 'store' })
    expect(valuesForLaterOf(design, judgeProgramme(early))).toBe(0)
  })

  test('joints to rework are production’s, an assembly a line', () => {
    const records = { ...untouched.facts.records, inspections: [inspection('S-1', 100, 2)] }
    const state = { ...untouched, facts: { ...untouched.facts, records } }
    expect(deskOf(of('production'), state)).toContainEqual(
      expect.objectContaining({ verb: 'rework', place: { kind: 'assembly', serial: 'S-1' } }),
    )
    expect(deskOf(of('design'), state).filter(({ verb }) => verb === 'rework')).toEqual([])
  })
})

describe('a nonconformity', () => {
  const step = (
    kind: 'containment' | 'correction' | 'check',
    addedById: string,
    helped: boolean | null = null,
  ) => ({
    kind,
    addedById,
    helped,
    withdrawn: null,
  })
  const verbsFor = (actor: Actor, steps: ReturnType<typeof step>[]) =>
    deskEntriesOf(actor, untouched, judgeProgramme(untouched), [
      { number: 7, title: 'Pins do not wet', owner: 'production', steps },
    ])
      .filter(({ place }) => place.kind === 'nonconformity')
      .map(({ verb, bearing }) => `${verb}, ${bearing}`)
  const corrected = [step('containment', 'production'), step('correction', 'production')]
  test('waits for the department that sees to it until it is corrected', () => {
    expect(verbsFor(of('production'), [])).toEqual(['contain, own work'])
    expect(verbsFor(of('production'), [step('containment', 'production')])).toEqual(['correct, own work'])
    expect(verbsFor(of('quality'), [])).toEqual([])
  })
  test('is then checked by somebody who did not correct it', () => {
    expect(verbsFor(of('production'), corrected)).toEqual([])
    expect(verbsFor(of('production', 'another'), corrected)).toEqual(['check that it helped, others wait'])
    expect(verbsFor(of('quality'), corrected)).toEqual(['check that it helped, others wait'])
    expect(verbsFor(of('quality'), [...corrected, step('check', 'quality', true)])).toEqual([])
  })
  test('is not checked by whoever stands in for who corrected it', () => {
    const standIn: Actor = {
      ...of('production', 'another'),
      standsInFor: [{ personId: 'production', name: 'P', until: '2026-12-31' }],
    }
    expect(verbsFor(standIn, corrected)).toEqual([])
  })
})

test('a question lies on the desk of whom it asks, and whoever asked waits', () => {
  const state = { ...untouched, actions: [asked] }
  const place = { kind: 'action', number: 4 }
  expect(deskOf(of('production'), state)).toContainEqual(
    expect.objectContaining({ bearing: 'others wait', verb: 'answer', place, dueOn: '2026-03-09' }),
  )
  expect(deskOf(of('design'), state)).toContainEqual(
    expect.objectContaining({ bearing: 'I wait', verb: 'answer', place, waitsFor: 'Production' }),
  )
  expect(deskOf(of('quality'), state).map((entry) => entry.place)).not.toContainEqual(place)
})

test('what can be approved of a later stage waits for that stage', () => {
  const places = (state: ProgrammeState) =>
    deskOf(of('quality'), state).flatMap(({ verb, place }) => (verb === 'approve' ? [place] : []))
  // Coupons, store and closing are ready from the first day: nothing is missing of them but the signatures.
  expect(places(untouched)).toEqual([{ kind: 'sign list', stage: 'specification' }])
  const specified = signedUpTo('specification')
  const approved = { ...specified, approvals: specified.approvals.slice(0, 4) }
  expect(places(approved)).toEqual([{ kind: 'item', item: 'coupons', part: 'approvals' }])
})

test('an item that only others have still to approve is waited for', () => {
  const whole = signedUpTo('specification')
  const approvals = whole.approvals.filter(
    ({ itemKey, department }) => itemKey !== 'coupons' || department !== 'quality',
  )
  const state = { ...whole, approvals }
  expect(deskOf(of('design'), state)).toContainEqual(
    expect.objectContaining({ bearing: 'I wait', verb: 'approve', message: 'coupons', waitsFor: 'Quality' }),
  )
  expect(deskOf(of('quality'), state)).toContainEqual(
    expect.objectContaining({ bearing: 'others wait', verb: 'approve', message: 'coupons' }),
  )
})

test('whose own deeds bar them bars whoever stands in for them', () => {
  const tailoredOut = {
    reason: 'r',
    proposedById: 'away',
    proposedByName: 'Away',
    proposedAt: '2026-01-01T00:00:00.000Z',
    agreed: null,
  }
  const state = { ...untouched, items: untouched.items.map((item) => ({ ...item, tailoredOut })) }
  const decisions = (actor: Actor) => deskOf(actor, state).filter(({ verb }) => verb === 'decide')
  expect(decisions(of('quality')).length).toBe(state.items.length)
  const standsInFor = [{ personId: 'away', name: 'Away', until: '2026-03-09' }]
  expect(decisions({ ...of('quality'), standsInFor })).toEqual([])
})

test('no two lines of a desk are the same thing', () => {
  for (const department of ['design', 'production', 'quality'] as const) {
    const keys = deskOf(of(department), { ...untouched, actions: [asked] }).map(deskKey)
    expect(new Set(keys).size).toBe(keys.length)
  }
})
