import type { JsonValue } from '@/shared/trail/canonical-json'
import type { Writes } from '../spoken-entry'

const rightsOf = (rights: JsonValue | undefined) => ({
  auditor: rights === 'auditor',
  administrator: rights === 'administrator',
})

const addPerson: Writes = ({ at, said }, rows) =>
  rows.insert('Person', {
    id: said['personId'],
    email: said['email'],
    name: said['person'],
    identity: null,
    ...rightsOf(said['rights']),
    disabledAt: null,
    createdAt: at,
  })

const changePerson: Writes = ({ said }, rows) =>
  rows.change(
    'Person',
    { id: said['personId'] },
    { name: said['name'], email: said['email'], ...rightsOf(said['rights']) },
  )

const disablePerson: Writes = ({ at, said }, rows) =>
  rows.change('Person', { id: said['personId'] }, { disabledAt: at })

const enablePerson: Writes = ({ said }, rows) =>
  rows.change('Person', { id: said['personId'] }, { disabledAt: null })

const bindIdentity: Writes = ({ said }, rows) =>
  rows.change('Person', { id: said['personId'] }, { identity: said['identity'] })

/** A password's value is in no trail; that it changed is the entry itself. */
const nothingCompared: Writes = () => undefined

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
  'reset-password': nothingCompared,
  'change-own-password': nothingCompared,
  'add-instrument': addInstrument,
  'calibrate-instrument': calibrateInstrument,
  'take-instrument-out-of-use': takeInstrumentOutOfUse,
  'first-administrator': addPerson,
  'bind-identity': bindIdentity,
} as const
