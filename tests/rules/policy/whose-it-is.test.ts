import { describe, expect, test } from 'vitest'
import type { Actor } from '@/shared/actor'
import type { NameWithSubject, SubjectOf } from '@/shared/commands/all-faces'
import { gateFor, itemStateFor, judgeProgramme } from '@/shared/gate/judgement'
import type { ChangeNotice, NoticeStanding } from '@/shared/gate/change-notice'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENTS, type Department } from '@/shared/plan/department'
import { partRefusal, refusal, type SubjectArgument } from '@/shared/policy'
import { signedUpTo } from '@/tests/rules/gate/small-programme'

/* Who may in this project is its own decision, with no source outside it; what is checked here is that one function says so. */

const person = (personId: string, ...departments: Department[]): Actor => ({
  personId,
  name: personId,
  departments,
  leads: false,
  auditor: false,
  administrator: false,
})
const design = person('d', 'design')
const production = person('p', 'production')
const quality = person('q', 'quality')
const lead: Actor = { ...person('l'), leads: true }
const administrator: Actor = { ...person('a'), administrator: true }

/** A command on one subject, asked by somebody whose part allows it both times. */
interface Case<N extends NameWithSubject> {
  readonly subject: SubjectOf<N>
  readonly may: Actor
  readonly mayNot: Actor
  readonly message: RegExp
}

const asked = { number: 3, from: 'design', to: 'production', answeredById: 'p' } as const
const lesson = {
  programme: 'LX-41',
  number: 1,
  proposed: { byId: 'q', byName: 'Quill', at: '2026-01-01T00:00:00.000Z' },
  decided: null,
}
const concession: ConcessionEntry = {
  id: 'c',
  number: 1,
  itemKey: 'finish',
  rule: 'r',
  findingDigest: '',
  findingData: null,
  permit: null,
  why: 'w',
  quantity: 1,
  untilOn: null,
  requestedById: 'q',
  requestedByName: 'Quill',
  requestedAt: '2026-01-01T00:00:00.000Z',
  design: null,
  quality: null,
  refused: null,
}
const unapproved = { ...signedUpTo('specification'), approvals: [] }
const item = itemStateFor(judgeProgramme(unapproved), 'finish')!
const unsigned = { ...signedUpTo('evaluation'), gateSignatures: [] }
const judged = judgeProgramme(unsigned)
const gate = gateFor(judged, 'specification')!

const notice: ChangeNotice = {
  number: 1,
  title: 'T',
  reason: 'R',
  costPerBoard: null,
  costOnce: null,
  openedById: 'd',
  openedByName: 'D',
  openedAt: '2026-01-01T00:00:00.000Z',
  changes: [
    {
      id: 'c',
      change: { kind: 'value', parameter: 'board-thickness', value: 1.6, seen: 0 },
      reason: 'R',
      authorId: 'd',
      authorName: 'D',
      at: '2026-01-01T00:00:00.000Z',
    },
  ],
  answers: [],
  disposition: null,
}
const standing: NoticeStanding = {
  notice,
  digest: 'x',
  overtaken: [],
  answers: DEPARTMENTS.map((department) => ({
    department,
    holds: true,
    answer: {
      department,
      agrees: true,
      reason: '',
      digest: 'x',
      personId: department === 'design' ? 'e' : department,
      personName: 'Somebody',
      at: '2026-01-01T00:00:00.000Z',
    },
  })),
}

const CASES: { readonly [N in NameWithSubject]: Case<N> } = {
  'approve-part': {
    subject: { authorId: 'd' },
    may: quality,
    mayNot: { ...quality, personId: 'd' },
    message: /revision is your own/,
  },
  'accept-answer': {
    subject: asked,
    may: design,
    mayNot: quality,
    message: /^Design engineering asked and accepts/,
  },
  'return-answer': {
    subject: asked,
    may: design,
    mayNot: quality,
    message: /^Design engineering asked and returns/,
  },
  'withdraw-action': {
    subject: asked,
    may: design,
    mayNot: production,
    message: /only they can withdraw it/,
  },
  'answer-action': {
    subject: asked,
    may: production,
    mayNot: design,
    message: /^Action 3 is for production/,
  },
  'attach-answer-file': {
    subject: asked,
    may: production,
    mayNot: design,
    message: /^Action 3 is for production/,
  },
  'ask-action': {
    subject: { from: 'design' },
    may: design,
    mayNot: quality,
    message: /a department you belong to/,
  },
  'withdraw-evidence': {
    subject: { addedById: 'd' },
    may: quality,
    mayNot: production,
    message: /^Only who attached it/,
  },
  'decide-lesson': {
    subject: lesson,
    may: person('r', 'quality'),
    mayNot: quality,
    message: /^You proposed it/,
  },
  'decide-set-aside': {
    subject: { proposedById: 'q' },
    may: person('r', 'quality'),
    mayNot: quality,
    message: /^You proposed it/,
  },
  'add-record': {
    subject: { label: 'rework', departments: ['production', 'quality'] },
    may: production,
    mayNot: design,
    message: /^Production or Quality keeps this kind of record \(rework\)\.$/,
  },
  'correct-record': {
    subject: { departments: ['quality'] },
    may: quality,
    mayNot: design,
    message: /^Only a department that keeps this kind/,
  },
  'withdraw-record': {
    subject: { departments: ['quality'] },
    may: quality,
    mayNot: design,
    message: /^Only a department that keeps this kind/,
  },
  'revise-parameter': {
    subject: { label: 'Hole', owner: 'design' },
    may: design,
    mayNot: production,
    message: /^Hole belongs to design engineering\. Ask them with an action\.$/,
  },
  'adopt-from-board': {
    subject: {
      parameters: [
        { label: 'Hole', owner: 'design' },
        { label: 'Pallet', owner: 'design' },
      ],
    },
    may: design,
    mayNot: production,
    message: /^Hole belongs to design engineering\. Ask them with an action\.$/,
  },
  'keep-own-value': {
    subject: { label: 'Hole', owner: 'design' },
    may: design,
    mayNot: production,
    message: /^Hole belongs to design engineering\. Ask them with an action\.$/,
  },
  'adopt-option': {
    subject: {
      item: { title: 'Frame', owner: 'design' },
      changes: new Map([['annual-volume', 5]]),
      limits: [],
    },
    may: production,
    mayNot: design,
    message: /belongs to production; they or the lead/,
  },
  'approve-item': {
    subject: { department: 'design', item, state: unapproved },
    may: design,
    mayNot: quality,
    message: /^You are not in design engineering\.$/,
  },
  'drop-change': {
    subject: { notice, change: { authorId: 'd' } },
    may: design,
    mayNot: production,
    message: /^Only who put the change in/,
  },
  'answer-change-notice': {
    subject: { department: 'design', standing },
    may: design,
    mayNot: person('e', 'quality'),
    message: /^You are not in design engineering\.$/,
  },
  'adopt-change-notice': {
    subject: standing,
    may: quality,
    mayNot: person('d', 'quality'),
    message: /^You proposed every change of it/,
  },
  'close-change-notice': {
    subject: { standing, disposition: 'withdrawn' },
    may: design,
    mayNot: production,
    message: /^Only who opened the notice/,
  },
  'approve-items': {
    subject: { department: 'design' },
    may: design,
    mayNot: quality,
    message: /^You are not in design engineering\.$/,
  },
  'grant-concession': {
    subject: { department: 'quality', concession },
    may: person('r', 'quality'),
    mayNot: quality,
    message: /^You asked for this concession/,
  },
  'sign-gate': {
    subject: { department: 'design', gate, items: judged.items, concessions: [] },
    may: design,
    mayNot: quality,
    message: /^You are not in design engineering\.$/,
  },
  'close-review': {
    subject: { number: 2, chairId: 'd', chair: 'Dell' },
    may: design,
    mayNot: quality,
    message: /^Dell chairs review 2 and closes it\.$/,
  },
  'record-step': {
    subject: { number: 4, owner: 'production', kind: 'correction', correctedById: undefined },
    may: production,
    mayNot: design,
    message: /^Production sees to nonconformity 4; quality may record for them\.$/,
  },
  'withdraw-step': {
    subject: { addedById: 'p' },
    may: quality,
    mayNot: design,
    message: /^Only who recorded it, or quality/,
  },
  'end-delegation': {
    subject: { personId: 'd', delegateId: 'p' },
    may: design,
    mayNot: quality,
    message: /^Only who is away, or who stands in, can end it\.$/,
  },
  'disable-person': {
    subject: { personId: 'a' },
    may: { ...administrator, personId: 'b' },
    mayNot: administrator,
    message: /^You cannot disable yourself\.$/,
  },
  'reset-password': {
    subject: { personId: 'a' },
    may: { ...administrator, personId: 'b' },
    mayNot: administrator,
    message: /^Change your own password/,
  },
}

describe.each(Object.keys(CASES) as NameWithSubject[])('%s', (command) => {
  const { subject, may, mayNot, message } = CASES[command]
  const on = [subject] as SubjectArgument<NameWithSubject>
  test('is refused for whose it is, where the part alone would allow it', () => {
    expect(partRefusal(command, mayNot)).toBeUndefined()
    expect(refusal(command, mayNot, ...on)).toMatch(message)
  })
  test('is allowed to whom it belongs', () => {
    expect(refusal(command, may, ...on)).toBeUndefined()
  })
  test('is refused for the part first, whosever it is', () => {
    expect(refusal(command, { ...may, auditor: true }, ...on)).toMatch(/^An auditor reads everything/)
  })
})

test('the lead may where a value belongs to another department; nobody decides on an answer of their own', () => {
  expect(refusal('revise-parameter', lead, { label: 'Hole', owner: 'design' })).toBeUndefined()
  const ownAnswer = { ...asked, answeredById: 'd' }
  expect(refusal('accept-answer', design, ownAnswer)).toMatch(/^You answered it yourself/)
  expect(refusal('return-answer', design, ownAnswer)).toMatch(/^You answered it yourself/)
  const ownCheck = { number: 4, owner: 'production', kind: 'check', correctedById: 'p' } as const
  expect(refusal('record-step', production, ownCheck)).toMatch(/^You recorded the correction yourself/)
  expect(refusal('record-step', design, ownCheck)).toBeUndefined()
  expect(refusal('record-step', quality, { ...ownCheck, kind: 'cause' })).toBeUndefined()
  expect(refusal('withdraw-evidence', design, { addedById: 'd' })).toBeUndefined()
})
