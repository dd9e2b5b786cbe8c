import { describe, expect, test } from 'vitest'
import { openedWith, type AlternativeContent } from '@/shared/gate/option-alternative'
import {
  comparedWith,
  standing,
  studyRevision,
  withAdded,
  withChanged,
  withWithdrawn,
} from '@/shared/gate/study-revision'

/* How a study is written on while it is open is this project's own decision, with no source outside it. */

const content = (name: string, values: AlternativeContent['values'] = {}): AlternativeContent => ({
  name,
  note: '',
  values,
  limits: [],
  costs: [],
  defectsPerMillion: null,
  actions: [],
})
const deed = (why: string) => ({ byId: 'd', byName: 'Dora', at: '2026-03-01T08:00:00.000Z', why })
const opened = [openedWith(content('A', { coat: 5 })), openedWith(content('B', { coat: 8 }))]

describe('an open study', () => {
  test('is revision 1 as it was opened, and one more with every deed', () => {
    expect(studyRevision(opened)).toBe(1)
    const added = withAdded(opened, content('C', { coat: 9 }), {}, deed('One more.'))
    expect(studyRevision(added)).toBe(2)
    const changed = withChanged(added, 'B', content('B', { coat: 7 }), {}, deed('Quoted anew.'))
    expect(studyRevision(changed)).toBe(3)
    expect(studyRevision(withWithdrawn(changed, 'A', deed('Not to be had.')))).toBe(4)
  })
  test('keeps what an alternative says when another begins to compare a value it did not name', () => {
    const added = withAdded(opened, content('C', { coat: 9, width: 2 }), { width: 1 }, deed('Wider.'))
    expect(added.map(({ values }) => values)).toEqual([
      { coat: 5, width: 1 },
      { coat: 8, width: 1 },
      { coat: 9, width: 2 },
    ])
    expect(added.map((one) => one.added?.why)).toEqual([undefined, undefined, 'Wider.'])
  })
  test('changes the one that is named, keeps who did and why, and draws on answers from then on', () => {
    const stated = opened.map((one) => ({ ...one, drawsOnAnswers: false }))
    const [a, b] = withChanged(stated, 'B', content('B', { coat: 7 }), {}, deed('Quoted anew.'))
    expect(a).toMatchObject({ values: { coat: 5 }, drawsOnAnswers: false, changed: [] })
    expect(b).toMatchObject({ values: { coat: 7 }, drawsOnAnswers: true, changed: [{ why: 'Quoted anew.' }] })
  })
  test('keeps a withdrawn alternative to be read, but not to be chosen', () => {
    const left = withWithdrawn(opened, 'A', deed('Not to be had.'))
    expect(left).toHaveLength(2)
    expect(standing(left).map(({ name }) => name)).toEqual(['B'])
  })
})

describe('what one more alternative says beside the others', () => {
  const today = new Map<string, unknown>([
    ['coat', 6],
    ['width', 1],
    ['length', 40],
  ])
  test('is today’s value of what is compared and it does not name', () => {
    expect(comparedWith(opened, { width: 2 }, today)).toEqual({
      values: { coat: 6, width: 2 },
      written: { width: 1 },
    })
  })
  test('leaves out what is as today and nobody compares', () => {
    expect(comparedWith(opened, { coat: 9, length: 40 }, today)).toEqual({ values: { coat: 9 }, written: {} })
  })
  test('writes nothing down where today says nothing', () => {
    expect(comparedWith(opened, { pitch: 2.54 }, today)).toEqual({
      values: { coat: 6, pitch: 2.54 },
      written: {},
    })
  })
})
