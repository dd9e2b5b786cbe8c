import type { Writes } from '../spoken-entry'
import { insertRequirement, insertRevision } from './stated-rows'

const reviseParameter: Writes = ({ at, actorId, said }, rows) =>
  insertRevision(rows, { ...said, number: said['revision'] }, { authorId: said['author'] ?? actorId, at })

const stateRequirement: Writes = ({ at, actorId, said }, rows) =>
  insertRequirement(rows, { ...said, lesson: null }, { authorId: said['author'] ?? actorId, at })

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

/** Each value that was adopted has an entry of its own. */
const adoptFromBoard: Writes = () => undefined

/** What is written of specified values, requirements and the ceiling of the money. */
export const SPECIFICATION_WRITES = {
  'revise-parameter': reviseParameter,
  'adopt-from-board': adoptFromBoard,
  'state-requirement': stateRequirement,
  'withdraw-requirement': withdrawRequirement,
  'set-money-ceiling': setMoneyCeiling,
} as const
