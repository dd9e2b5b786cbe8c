import type { Writes } from '../spoken-entry'

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

const setMoneyCeiling: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('MoneyCeiling', {
    number: said['number'],
    amount: said['amount'],
    boards: said['boards'],
    lots: said['lots'],
    reason: said['reason'],
    authorId: actorId,
    at,
  })

/** What is written of specified values, requirements and the ceiling of the money. */
export const SPECIFICATION_WRITES = {
  'revise-parameter': reviseParameter,
  'state-requirement': stateRequirement,
  'withdraw-requirement': withdrawRequirement,
  'set-money-ceiling': setMoneyCeiling,
} as const
