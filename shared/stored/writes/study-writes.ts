import {
  alternativeOf,
  type AlternativeContent,
  type Deed,
  type OptionAlternative,
} from '@/shared/gate/option-alternative'
import { withAdded, withChanged, withWithdrawn } from '@/shared/gate/study-revision'
import { givenByAdoption } from '@/shared/plan/given-reasons'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from '../expected-rows'
import { saidList, saidObject, type SpokenEntry, type Writes } from '../spoken-entry'
import { insertRequirement, insertRevision } from './stated-rows'

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

/** A study whose alternatives an entry leaves as others. */
const revising =
  (
    revise: (alternatives: readonly OptionAlternative[], entry: SpokenEntry) => readonly OptionAlternative[],
  ): Writes =>
  (entry, rows) =>
    rows.change(
      'OptionStudy',
      { number: entry.said['study'] },
      { alternatives: revise(alternativesOf(entry, rows), entry) as unknown as JsonValue },
    )

const nameIn = ({ said }: SpokenEntry): string => String(said['name'])

const addAlternative = revising((alternatives, entry) =>
  withAdded(alternatives, contentIn(entry), writtenIn(entry), deedOf(entry)),
)
const changeAlternative = revising((alternatives, entry) =>
  withChanged(alternatives, nameIn(entry), contentIn(entry), writtenIn(entry), deedOf(entry)),
)
const withdrawAlternative = revising((alternatives, entry) =>
  withWithdrawn(alternatives, nameIn(entry), deedOf(entry)),
)

const adoptOption: Writes = ({ at, actorId, said }, rows) => {
  rows.change(
    'OptionStudy',
    { number: said['study'] },
    { adopted: said['adopted'], adoptedWhy: said['reason'], adoptedById: actorId, adoptedAt: at },
  )
  const reason = givenByAdoption(Number(said['study']), String(said['adopted']), String(said['reason']))
  const by = { authorId: actorId, at }
  for (const revision of saidList(said['revisions'])) insertRevision(rows, { ...revision, reason }, by)
  for (const requirement of saidList(said['requirements']))
    insertRequirement(rows, { ...requirement, reason }, by)
}

/** What is written of option studies. */
export const STUDY_WRITES = {
  'open-option-study': openOptionStudy,
  'add-alternative': addAlternative,
  'change-alternative': changeAlternative,
  'withdraw-alternative': withdrawAlternative,
  'adopt-option': adoptOption,
} as const
