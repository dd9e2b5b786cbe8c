import type { Writes } from '../spoken-entry'

const nameDelegate: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Delegation', {
    id: said['delegation'],
    personId: actorId,
    delegateId: said['delegateId'],
    fromOn: said['fromOn'],
    toOn: said['toOn'],
    namedAt: at,
    endedById: null,
    endedAt: null,
  })

const endDelegation: Writes = ({ at, actorId, said }, rows) =>
  rows.change('Delegation', { id: said['delegation'] }, { endedById: actorId, endedAt: at })

/** A person has one row: what they choose later takes the place of what they chose before. */
const chooseDigest: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('DigestWish', { personId: actorId, wanted: said['wanted'], chosenAt: at })

const createCalendarAddress: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('CalendarAddress', {
    id: said['address'],
    personId: actorId,
    tokenHash: said['tokenHash'],
    createdAt: at,
    revokedAt: null,
  })

const revokeCalendarAddress: Writes = ({ at, said }, rows) =>
  rows.change('CalendarAddress', { id: said['address'] }, { revokedAt: at })

/** What is written of people's desks. */
export const DESK_WRITES = {
  'name-delegate': nameDelegate,
  'end-delegation': endDelegation,
  'choose-digest': chooseDigest,
  'create-calendar-address': createCalendarAddress,
  'revoke-calendar-address': revokeCalendarAddress,
} as const
