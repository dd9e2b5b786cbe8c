import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from '../expected-rows'
import type { Writes } from '../spoken-entry'

const rightsOf = (rights: JsonValue | undefined) => ({
  auditor: rights === 'auditor',
  administrator: rights === 'administrator',
})

/** A one-time password is good until a day that older entries do not say. */
const oneTimePassword = (until: JsonValue | undefined) => ({
  mustChangePassword: until === undefined ? undefined : until !== null,
  oneTimePasswordUntil: until,
})

const addPerson: Writes = ({ at, said }, rows) =>
  rows.insert('Person', {
    id: said['personId'],
    email: said['email'],
    name: said['person'],
    identity: null,
    ...rightsOf(said['rights']),
    worksDepartment: said['worksDepartment'] ?? null,
    disabledAt: null,
    credentialEpoch: 0,
    ...oneTimePassword(said['oneTimePasswordUntil']),
    createdAt: at,
  })

/** Sessions begun before have ended. */
function endSessions(id: JsonValue | undefined, rows: ExpectedRows): void {
  const epoch = Number(rows.valueOf('Person', { id }, 'credentialEpoch'))
  rows.change('Person', { id }, { credentialEpoch: epoch + 1 })
}

const changePerson: Writes = ({ said }, rows) => {
  const person = { id: said['personId'] }
  const rights = rightsOf(said['rights'])
  const isChanged = (['auditor', 'administrator'] as const).some(
    (right) => rows.valueOf('Person', person, right) !== rights[right],
  )
  rows.change('Person', person, {
    name: said['name'],
    email: said['email'],
    ...rights,
    ...(said['worksDepartment'] !== undefined && { worksDepartment: said['worksDepartment'] }),
  })
  if (isChanged) endSessions(person.id, rows)
}

const disablePerson: Writes = ({ at, said }, rows) => {
  rows.change('Person', { id: said['personId'] }, { disabledAt: at })
  endSessions(said['personId'], rows)
}

/** Given by somebody else; of the password itself nothing is in any trail. */
const givePassword: Writes = ({ said }, rows) => {
  const [id, until] = [said['personId'], said['oneTimePasswordUntil']]
  if (until === undefined) rows.forget('Person', { id }, 'oneTimePasswordUntil')
  rows.change('Person', { id }, { mustChangePassword: true, oneTimePasswordUntil: until })
  endSessions(id, rows)
}

const changeOwnPassword: Writes = ({ actorId: id }, rows) => {
  rows.change('Person', { id }, { mustChangePassword: false, oneTimePasswordUntil: null })
  endSessions(id, rows)
}

const enablePerson: Writes = ({ said }, rows) =>
  rows.change('Person', { id: said['personId'] }, { disabledAt: null })

const bindIdentity: Writes = ({ said }, rows) =>
  rows.change('Person', { id: said['personId'] }, { identity: said['identity'] })

const addInstrument: Writes = ({ at, said }, rows) =>
  rows.insert('Instrument', {
    id: said['id'],
    tag: said['tag'],
    measures: said['measures'],
    calibratedOn: said['calibratedOn'],
    dueOn: said['dueOn'],
    certificate: said['certificate'],
    outOfUse: false,
    updatedAt: at,
  })

const calibrateInstrument: Writes = ({ at, said }, rows) =>
  rows.change(
    'Instrument',
    { id: said['instrument'] },
    {
      calibratedOn: said['calibratedOn'],
      dueOn: said['dueOn'],
      certificate: said['certificate'],
      outOfUse: false,
      updatedAt: at,
    },
  )

const takeInstrumentOutOfUse: Writes = ({ at, said }, rows) =>
  rows.change('Instrument', { id: said['instrument'] }, { outOfUse: true, updatedAt: at })

/** What is written of people and instruments. */
export const INSTALLATION_WRITES = {
  'add-person': addPerson,
  'change-person': changePerson,
  'disable-person': disablePerson,
  'enable-person': enablePerson,
  'reset-password': givePassword,
  'change-own-password': changeOwnPassword,
  'add-instrument': addInstrument,
  'calibrate-instrument': calibrateInstrument,
  'take-instrument-out-of-use': takeInstrumentOutOfUse,
  'first-administrator': addPerson,
  'renew-first-administrator': givePassword,
  'bind-identity': bindIdentity,
} as const
