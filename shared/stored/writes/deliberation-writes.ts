import type { JsonValue } from '@/shared/trail/canonical-json'
import { saidList, saidObject, type Writes } from '../spoken-entry'

/** A line of minutes as it is first written, but for what it says. */
export const blankLine = (authorId: string, at: string) =>
  ({
    about: null,
    action: null,
    ownerId: null,
    corrects: null,
    authorId,
    at,
    struckById: null,
    struckAt: null,
    struckWhy: null,
  }) as const

/** A subject without the name it was recorded with. */
export function bareSubject(value: JsonValue | undefined): JsonValue {
  const { kind, key } = saidObject(value)
  return kind === undefined || key === undefined ? null : { kind, key }
}

const openReview: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Review', {
    id: said['id'],
    number: said['number'],
    title: said['title'],
    heldOn: said['heldOn'],
    chairId: said['chairId'],
    present: said['present'],
    openedById: actorId,
    openedAt: at,
    closedById: null,
    closedByName: null,
    closedAt: null,
    digest: null,
    cover: null,
  })

const recordAttendance: Writes = ({ said }, rows) =>
  rows.change('Review', { number: said['review'] }, { chairId: said['chairId'], present: said['present'] })

const writeMinute: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('MinuteLine', {
    ...blankLine(actorId, at),
    id: said['id'],
    review: said['review'],
    number: said['line'],
    kind: said['kind'],
    about: bareSubject(said['about']),
    text: said['text'],
  })

const strikeMinute: Writes = ({ at, actorId, said }, rows) => {
  const { review, line } = said
  rows.change(
    'MinuteLine',
    { review, number: line },
    { struckById: actorId, struckAt: at, struckWhy: said['reason'] },
  )
  const instead = saidObject(said['instead'])
  if (instead['id'] === undefined) return
  rows.insert('MinuteLine', {
    ...blankLine(actorId, at),
    id: instead['id'],
    review,
    number: instead['line'],
    kind: said['kind'],
    about: bareSubject(said['about']),
    text: instead['text'],
    corrects: line,
  })
}

const addComment: Writes = ({ at, actorId, said }, rows) => {
  const about = saidObject(said['about'])
  rows.insert('Comment', {
    id: said['id'],
    number: said['number'],
    aboutKind: about['kind'],
    aboutKey: about['key'],
    text: said['text'],
    mentions: saidList(said['mentioned']).map(({ personId }) => personId ?? null),
    authorId: actorId,
    at,
    resolvedById: null,
    resolvedAt: null,
    action: null,
  })
}

const resolveComment: Writes = ({ at, actorId, said }, rows) =>
  rows.change('Comment', { number: said['comment'] }, { resolvedById: actorId, resolvedAt: at })

const openNonconformity: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Nonconformity', {
    id: said['id'],
    number: said['number'],
    title: said['title'],
    found: said['found'],
    foundOn: said['foundOn'],
    owner: said['owner'],
    place: said['place'],
    source: bareSubject(said['source']),
    openedById: actorId,
    at,
  })

const recordStep: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('NonconformityStep', {
    id: said['id'],
    nonconformity: said['nonconformity'],
    kind: said['kind'],
    text: said['text'],
    doneOn: said['doneOn'],
    helped: said['helped'],
    addedById: actorId,
    at,
    withdrawnById: null,
    withdrawnAt: null,
    withdrawnWhy: null,
  })

const withdrawStep: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'NonconformityStep',
    { id: said['step'] },
    { withdrawnById: actorId, withdrawnAt: at, withdrawnWhy: said['reason'] },
  )

/** What is written of reviews, comments and nonconformities. */
export const DELIBERATION_WRITES = {
  'open-review': openReview,
  'record-attendance': recordAttendance,
  'write-minute': writeMinute,
  'strike-minute': strikeMinute,
  'add-comment': addComment,
  'resolve-comment': resolveComment,
  'open-nonconformity': openNonconformity,
  'record-step': recordStep,
  'withdraw-step': withdrawStep,
} as const
