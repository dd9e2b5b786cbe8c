import { describe, expect, test } from 'vitest'
import type { Actor } from '@/shared/actor'
import type { NameWithSubject, SubjectOf } from '@/shared/commands/all-faces'
import { gateFor, itemStateFor, judgeProgramme } from '@/shared/gate/judgement'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import type { Department } from '@/shared/plan/department'
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

const CASES: { readonly [N in NameWithSubject]: Case<N> } = {
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
  'adopt-option': {
    subject: { item: { title: 'Frame', owner: 'design' }, changes: new Map([['annual-volume', 5]]) },
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
  expect(refusal('withdraw-evidence', design, { addedById: 'd' })).toBeUndefined()
})
