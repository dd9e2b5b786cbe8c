import { createHash } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { judgeProgramme } from '@/shared/gate/judgement'
import type { ActionEntry, ProgrammeState } from '@/shared/gate/programme-state'
import { agendaOf } from '@/shared/reviews/agenda'
import { becameOf } from '@/shared/reviews/became-of'
import { minutesContentOf } from '@/shared/reviews/minutes-content'
import type { MinuteLine, Review } from '@/shared/reviews/review'
import { sha256 } from '@/shared/trail/sha256'
import { signedUpTo } from '@/tests/rules/gate/small-programme'
import { UNANSWERED } from '@/tests/rules/gate/unanswered'

/* What stands on an agenda and what minutes cover is this project's own decision; the digest is held against Node's. */

const NOTHING_BESIDE = { studies: [], comments: [], nonconformities: [] }
const action: ActionEntry = {
  id: 'a',
  number: 3,
  itemKey: 'finish',
  from: 'design',
  to: 'production',
  kind: 'cost',
  question: 'What does 6 µm cost?',
  dueOn: '2026-03-01',
  askedById: 'd',
  askedByName: 'Dell',
  askedAt: '2026-02-02T08:00:00.000Z',
  ...UNANSWERED,
}
const line: MinuteLine = {
  number: 1,
  kind: 'action',
  about: { kind: 'item', key: 'finish' },
  text: 'What does 6 µm cost?',
  action: 3,
  owner: { id: 'p', name: 'Pell' },
  corrects: null,
  authorId: 'd',
  author: 'Dell',
  at: '2026-02-02T08:00:00.000Z',
  struck: null,
}
const review: Omit<Review, 'closed'> = {
  number: 1,
  title: 'First',
  heldOn: '2026-02-02',
  chairId: 'd',
  chair: 'Dell',
  present: [
    { kind: 'member', personId: 'd', name: 'Dell' },
    { kind: 'guest', name: 'Gesine', from: 'the supplier' },
  ],
  lines: [line],
}
const withAction = (one: ActionEntry): ProgrammeState => ({ ...signedUpTo('specification'), actions: [one] })

describe('the agenda', () => {
  const points = (state: ProgrammeState, beside = NOTHING_BESIDE as Parameters<typeof agendaOf>[2]) =>
    agendaOf(state, judgeProgramme(state), beside).map(
      ({ about, open }) => `${about.kind} ${about.key}: ${open}`,
    )

  test('names failing findings, questions until their answer is accepted, and proposals', () => {
    const open = withAction(action)
    const values = new Map(open.facts.values).set('test-coat', 3)
    const failing = { ...open, facts: { ...open.facts, values } }
    expect(points(failing)).toContain('finding test-coat-least: fails')
    expect(points(failing)).toContain('action 3: unanswered')
    expect(points(withAction({ ...action, outcome: 'withdrawn' }))).not.toContain('action 3: withdrawn')
  })

  test('names what is open beside the findings', () => {
    expect(
      points(signedUpTo('specification'), {
        studies: [{ number: 2, itemKey: 'finish' }],
        comments: [{ number: 5, about: { kind: 'item', key: 'finish' } }],
        nonconformities: [{ number: 1, standing: 'contained' }],
      }),
    ).toEqual(expect.arrayContaining(['study 2: proposed', 'comment 5: open', 'nonconformity 1: contained']))
  })
})

describe('the minutes as signed', () => {
  const digest = (
    changed: Partial<Review> = {},
    agenda = agendaOf(
      signedUpTo('specification'),
      judgeProgramme(signedUpTo('specification')),
      NOTHING_BESIDE,
    ),
  ) => sha256(minutesContentOf('T-1', { ...review, ...changed }, agenda))

  test('have the digest that Node’s own SHA-256 gives of their text', () => {
    const text = minutesContentOf('T-1', review, [])
    expect(sha256(text)).toBe(createHash('sha256').update(text).digest('hex'))
    expect(JSON.parse(text)).toMatchObject({ review: 1, lines: [{ action: 3, owner: { name: 'Pell' } }] })
  })

  test('are other minutes when any line, anybody present or anything open is another', () => {
    const before = digest()
    expect(digest({ lines: [{ ...line, text: 'What does 5 µm cost?' }] })).not.toBe(before)
    expect(
      digest({ lines: [{ ...line, struck: { byId: 'd', by: 'Dell', at: line.at, why: 'w' } }] }),
    ).not.toBe(before)
    expect(digest({ present: review.present.slice(1) })).not.toBe(before)
    expect(digest({ heldOn: '2026-02-03' })).not.toBe(before)
    expect(
      digest({}, [
        {
          group: 'actions',
          about: { kind: 'action', key: '3' },
          open: 'unanswered',
          count: 1,
          item: 'finish',
        },
      ]),
    ).not.toBe(before)
    expect(digest()).toBe(before)
  })
})

describe('what became of a line', () => {
  const answered: ActionEntry = {
    ...action,
    answer: {
      feasible: 'yes',
      amounts: [{ kind: 'piece', per: 'board', amount: 0.2, alternative: null }],
      comment: 'It does.',
    },
    answeredByName: 'Pell',
  }

  test('its action with the answer', () => {
    expect(becameOf(line, withAction(action)).action).toMatchObject({ number: 3, status: 'unanswered' })
    expect(becameOf(line, withAction(answered)).action).toMatchObject({
      status: 'answered',
      answer: { amounts: [{ amount: 0.2 }] },
      answeredBy: 'Pell',
    })
  })

  test('values of what it is about, revised since and not before', () => {
    const state = withAction(action)
    const revised = (at: string): ProgrammeState => ({
      ...state,
      revisions: new Map([
        [
          'test-coat',
          { parameter: 'test-coat', number: 2, value: 6, reason: 'r', authorId: 'd', authorName: 'Dell', at },
        ],
      ]),
    })
    expect(becameOf(line, revised('2026-02-05T08:00:00.000Z')).revised).toMatchObject([{ number: 2 }])
    expect(becameOf(line, revised('2026-02-01T08:00:00.000Z')).revised).toEqual([])
    expect(
      becameOf({ ...line, about: null, action: null }, revised('2026-02-05T08:00:00.000Z')).revised,
    ).toEqual([])
  })
})
