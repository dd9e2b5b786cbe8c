import { givenByAdoption } from '@/shared/plan/given-reasons'
import { saidList, type Writes } from '../spoken-entry'

const reviseParameter: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Revision', {
    parameter: said['parameter'],
    number: said['revision'],
    value: said['value'],
    reason: said['reason'],
    authorId: said['author'] ?? actorId,
    at,
    notice: said['notice'] ?? null,
  })

const stateRequirement: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Requirement', {
    id: said['id'],
    limit: said['limit'],
    authority: said['authority'],
    document: said['document'],
    clause: said['clause'],
    value: said['value'],
    relaxes: said['relaxes'],
    reason: said['reason'],
    lesson: null,
    authorId: said['author'] ?? actorId,
    at,
    withdrawnById: null,
    withdrawnAt: null,
    notice: said['notice'] ?? null,
    withdrawnNotice: null,
  })

const withdrawRequirement: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'Requirement',
    { id: said['requirement'] },
    { withdrawnById: said['author'] ?? actorId, withdrawnAt: at, withdrawnNotice: said['notice'] ?? null },
  )

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

const adoptOption: Writes = ({ at, actorId, said }, rows) => {
  rows.change(
    'OptionStudy',
    { number: said['study'] },
    { adopted: said['adopted'], adoptedWhy: said['reason'], adoptedById: actorId, adoptedAt: at },
  )
  const reason = givenByAdoption(Number(said['study']), String(said['adopted']), String(said['reason']))
  for (const { parameter, number, value } of saidList(said['revisions']))
    rows.insert('Revision', { parameter, number, value, reason, authorId: actorId, at, notice: null })
}

/** What is written of specified values, requirements and option studies. */
export const SPECIFICATION_WRITES = {
  'revise-parameter': reviseParameter,
  'state-requirement': stateRequirement,
  'withdraw-requirement': withdrawRequirement,
  'open-option-study': openOptionStudy,
  'adopt-option': adoptOption,
} as const
