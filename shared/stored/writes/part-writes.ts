import type { Writes } from '../spoken-entry'
import { RECORD_WRITES } from './record-writes'

const describePart: Writes = ({ at, actorId, said }, rows) => {
  rows.insert('Part', {
    id: said['id'],
    code: said['code'],
    describedById: actorId,
    describedAt: at,
    withdrawnById: null,
    withdrawnAt: null,
    withdrawnWhy: null,
  })
  rows.insert('PartRevision', {
    number: 1,
    values: said['values'],
    reason: said['reason'],
    authorId: actorId,
    at,
  })
}

const revisePart: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('PartRevision', {
    number: said['number'],
    values: said['values'],
    reason: said['reason'],
    authorId: actorId,
    at,
  })

const approvePart: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.insert('PartApproval', {
    id: said['id'],
    revision: said['revision'],
    digest: said['digest'],
    cover: said['cover'],
    personId: actorId,
    personName: actorName,
    at,
  })

const withdrawPart: Writes = ({ trailId, at, actorId, said }, rows) =>
  rows.change(
    'Part',
    { id: trailId },
    { withdrawnById: actorId, withdrawnAt: at, withdrawnWhy: said['reason'] },
  )

const reinstatePart: Writes = ({ trailId }, rows) =>
  rows.change('Part', { id: trailId }, { withdrawnById: null, withdrawnAt: null, withdrawnWhy: null })

/** What is written of the parts of the works. */
export const PART_WRITES = {
  'describe-part': describePart,
  'revise-part': revisePart,
  'approve-part': approvePart,
  'withdraw-part': withdrawPart,
  'reinstate-part': reinstatePart,
  'attach-drawing': RECORD_WRITES['attach-evidence'],
  'withdraw-drawing': RECORD_WRITES['withdraw-evidence'],
} as const
