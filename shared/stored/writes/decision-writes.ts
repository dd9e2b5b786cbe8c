import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import { saidList, saidObject, type Writes } from '../spoken-entry'
import { bareSubject, blankLine } from './deliberation-writes'

const askAction: Writes = (entry, rows) => {
  const { at, actorId, said } = entry
  writeOrigin(entry, rows)
  rows.insert('Action', {
    id: said['id'],
    number: said['number'],
    itemKey: said['itemKey'],
    from: said['from'],
    to: said['to'],
    kind: said['kind'],
    question: said['question'],
    dueOn: said['dueOn'],
    askedById: actorId,
    askedAt: at,
    askedOfId: said['askedOfId'] ?? null,
    study: said['study'] ?? null,
    answer: null,
    answeredById: null,
    answeredAt: null,
    outcome: null,
    outcomeWhy: null,
    closedById: null,
    closedAt: null,
    bornOf: said['bornOf'] ?? null,
  })
}

/** What an action does to where it came from: a line of the minutes, or the comment that it resolves. */
const writeOrigin: Writes = ({ at, actorId, said }, rows) => {
  const origin = saidObject(said['bornOf'])
  if (origin['kind'] === 'comment')
    rows.change(
      'Comment',
      { number: origin['comment'] },
      { resolvedById: actorId, resolvedAt: at, action: said['number'] },
    )
  if (origin['kind'] === 'minute')
    rows.insert('MinuteLine', {
      ...blankLine(actorId, at),
      id: origin['lineId'],
      review: origin['review'],
      number: origin['line'],
      kind: 'action',
      about: bareSubject(origin['about']),
      text: said['question'],
      action: said['number'],
      ownerId: origin['ownerId'],
    })
}

const answerAction: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'Action',
    { number: said['action'] },
    { answer: said['answer'], answeredById: actorId, answeredAt: at, outcome: null, outcomeWhy: null },
  )

const attachAnswerFile: Writes = ({ at, actorId, said }, rows) => {
  rows.insert('AnswerFile', {
    id: said['id'],
    action: said['action'],
    sha256: said['sha256'],
    fileName: said['fileName'],
    note: said['note'],
    addedById: actorId,
    at,
  })
  rows.nameFile(said['sha256'], said['size'], said['mediaType'])
}

/** An action's outcome, with the member of the entry that says why. */
const closeAction =
  (outcome: string, why: string): Writes =>
  ({ at, actorId, said }, rows) =>
    rows.change(
      'Action',
      { number: said['action'] },
      { outcome, outcomeWhy: said[why], closedById: actorId, closedAt: at },
    )

/** A cover is stored as the text that its digest was taken over, and recorded as the value it holds. */
const signedContentText = (cover: JsonValue | undefined): string | undefined =>
  cover === undefined ? undefined : canonicalJson(cover)

const approveItem: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.insert('Approval', {
    id: said['approval'],
    itemKey: said['item'],
    department: said['department'],
    personId: actorId,
    personName: actorName,
    digest: said['digest'],
    cover: signedContentText(said['cover']),
    found: said['found'] === undefined ? null : canonicalJson(said['found']),
    confirms: said['confirms'] ?? null,
    at,
  })

/** Each approval of the list has an entry of its own. */
const approveItems: Writes = () => undefined

const signGate: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.insert('GateSignature', {
    id: said['signature'],
    stage: said['stage'],
    department: said['department'],
    personId: actorId,
    personName: actorName,
    digest: said['digest'],
    cover: signedContentText(said['cover']),
    merkleRoot: said['merkleRoot'],
    trailSeq: said['trailSeq'],
    headHash: said['headHash'],
    at,
  })

const closeReview: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.change(
    'Review',
    { number: said['review'] },
    {
      closedById: actorId,
      closedByName: actorName,
      closedAt: at,
      digest: said['digest'],
      cover: signedContentText(said['cover']),
    },
  )

/** Asked for after the fact, with what the finding found, or before it, with how far it may depart. */
const requestConcession: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Concession', {
    id: said['id'],
    number: said['number'],
    itemKey: said['itemKey'],
    rule: said['rule'],
    findingDigest: said['findingDigest'],
    findingData: signedContentText(said['findingData']) ?? null,
    permit: said['permit'] ?? null,
    why: said['why'],
    quantity: said['quantity'],
    untilOn: said['untilOn'],
    requestedById: actorId,
    requestedAt: at,
    designById: null,
    designName: null,
    designAt: null,
    qualityById: null,
    qualityName: null,
    qualityAt: null,
    refusedById: null,
    refusedAt: null,
    refusedWhy: null,
  })

/** What concessions of an earlier version were asked for, noted as data when the program was renewed. */
const carryConcessions: Writes = ({ said }, rows) => {
  for (const carried of saidList(said['concessions']))
    rows.change(
      'Concession',
      { number: carried['concession'] },
      { findingData: signedContentText(carried['findingData']) },
    )
}

const grantConcession: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.change(
    'Concession',
    { number: said['concession'] },
    said['department'] === 'design'
      ? { designById: actorId, designName: actorName, designAt: at }
      : { qualityById: actorId, qualityName: actorName, qualityAt: at },
  )

const refuseConcession: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'Concession',
    { number: said['concession'] },
    { refusedById: actorId, refusedAt: at, refusedWhy: said['reason'] },
  )

const proposeLesson: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.insert('Lesson', {
    number: said['lesson'],
    title: said['title'],
    learnt: said['learnt'],
    source: said['source'],
    change: said['change'],
    proposedById: actorId,
    proposedByName: actorName,
    proposedAt: at,
    decision: null,
    decisionWhy: null,
    decidedById: null,
    decidedByName: null,
    decidedAt: null,
    retiredAt: null,
    retiredWhy: null,
    retiredById: null,
    retiredByName: null,
  })

const decideLesson: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.change(
    'Lesson',
    { number: said['lesson'] },
    {
      decision: said['accepted'] === true ? 'accepted' : 'declined',
      decisionWhy: said['reason'],
      decidedById: actorId,
      decidedByName: actorName,
      decidedAt: at,
    },
  )

const retireLesson: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.change(
    'Lesson',
    { number: said['lesson'] },
    { retiredAt: at, retiredWhy: said['reason'], retiredById: actorId, retiredByName: actorName },
  )

/** What is written of actions, signatures, concessions and lessons. */
export const DECISION_WRITES = {
  'ask-action': askAction,
  'answer-action': answerAction,
  'attach-answer-file': attachAnswerFile,
  'accept-answer': closeAction('accepted', 'comment'),
  'return-answer': closeAction('returned', 'comment'),
  'withdraw-action': closeAction('withdrawn', 'reason'),
  'approve-item': approveItem,
  'approve-items': approveItems,
  'sign-gate': signGate,
  'close-review': closeReview,
  'request-concession': requestConcession,
  'request-deviation': requestConcession,
  'carry-concessions': carryConcessions,
  'grant-concession': grantConcession,
  'refuse-concession': refuseConcession,
  'propose-lesson': proposeLesson,
  'decide-lesson': decideLesson,
  'retire-lesson': retireLesson,
} as const
