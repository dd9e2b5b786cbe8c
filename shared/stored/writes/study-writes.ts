import { alternativeOf, type AlternativeContent, type Deed } from '@/shared/gate/option-alternative'
import { withAdded, withChanged, withWithdrawn } from '@/shared/gate/study-revision'
import { givenByAdoption } from '@/shared/plan/given-reasons'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from '../expected-rows'
import { saidList, saidObject, type SpokenEntry, type Writes } from '../spoken-entry'

const openOptionStudy: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('OptionStudy', {
    id: said['id'],
    number: said['number'],
    itemKey: said['itemKey'],
    title: said['title'],
    alternatives: said['alternatives'],
    openedById: actorId,
    openedAt: at,
    adopted: null,
    adoptedWhy: null,
    adoptedById: null,
    adoptedAt: null,
  })

const deedOf = ({ at, actorId, actorName, said }: SpokenEntry): Deed => ({
  byId: actorId,
  byName: actorName,
  at,
  why: String(said['reason']),
})

/** The alternatives as they stand before an entry that revises the study, whichever version wrote them. */
function alternativesOf({ said }: SpokenEntry, rows: ExpectedRows) {
  const stored = rows.valueOf('OptionStudy', { number: said['study'] }, 'alternatives')
  return (Array.isArray(stored) ? stored : []).map((one) =>
    alternativeOf(one as unknown as Parameters<typeof alternativeOf>[0]),
  )
}

const writtenIn = ({ said }: SpokenEntry) => saidObject(said['written']) as Record<string, JsonValue>
const contentIn = ({ said }: SpokenEntry) => said['alternative'] as unknown as AlternativeContent

const addAlternative: Writes = (entry, rows) =>
  rows.change(
    'OptionStudy',
    { number: entry.said['study'] },
    {
      alternatives: withAdded(
        alternativesOf(entry, rows),
        contentIn(entry),
        writtenIn(entry),
        deedOf(entry),
      ) as unknown as JsonValue,
    },
  )

const changeAlternative: Writes = (entry, rows) =>
  rows.change(
    'OptionStudy',
    { number: entry.said['study'] },
    {
      alternatives: withChanged(
        alternativesOf(entry, rows),
        String(entry.said['name']),
        contentIn(entry),
        writtenIn(entry),
        deedOf(entry),
      ) as unknown as JsonValue,
    },
  )

const withdrawAlternative: Writes = (entry, rows) =>
  rows.change(
    'OptionStudy',
    { number: entry.said['study'] },
    {
      alternatives: withWithdrawn(
        alternativesOf(entry, rows),
        String(entry.said['name']),
        deedOf(entry),
      ) as unknown as JsonValue,
    },
  )

const adoptOption: Writes = ({ at, actorId, said }, rows) => {
  rows.change(
    'OptionStudy',
    { number: said['study'] },
    { adopted: said['adopted'], adoptedWhy: said['reason'], adoptedById: actorId, adoptedAt: at },
  )
  const reason = givenByAdoption(Number(said['study']), String(said['adopted']), String(said['reason']))
  for (const { parameter, number, value } of saidList(said['revisions']))
    rows.insert('Revision', { parameter, number, value, reason, authorId: actorId, at, notice: null })
  for (const { id, limit, authority, document, clause, value, relaxes } of saidList(said['requirements']))
    rows.insert('Requirement', {
      id,
      limit,
      authority,
      document,
      clause,
      value,
      relaxes,
      reason,
      lesson: null,
      authorId: actorId,
      at,
      withdrawnById: null,
      withdrawnAt: null,
      notice: null,
      withdrawnNotice: null,
    })
}

/** What is written of option studies. */
export const STUDY_WRITES = {
  'open-option-study': openOptionStudy,
  'add-alternative': addAlternative,
  'change-alternative': changeAlternative,
  'withdraw-alternative': withdrawAlternative,
  'adopt-option': adoptOption,
} as const
