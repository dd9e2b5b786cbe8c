import { saidList, type Writes } from '../spoken-entry'

const OPEN = { closedById: null, closedAt: null, closedWhy: null } as const

const openLine: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Line', {
    id: said['id'],
    code: said['code'],
    name: said['name'],
    openedById: actorId,
    openedAt: at,
    ...OPEN,
  })

const closeLine: Writes = ({ trailId, at, actorId, said }, rows) =>
  rows.change('Line', { id: trailId }, { closedById: actorId, closedAt: at, closedWhy: said['reason'] })

const openMachine: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Machine', {
    id: said['id'],
    code: said['code'],
    lineId: said['lineId'],
    kind: said['kind'],
    openedById: actorId,
    openedAt: at,
    ...OPEN,
  })

const closeMachine: Writes = ({ trailId, at, actorId, said }, rows) =>
  rows.change('Machine', { id: trailId }, { closedById: actorId, closedAt: at, closedWhy: said['reason'] })

const addSupplier: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Supplier', { id: said['id'], code: said['supplier'], addedById: actorId, at, ...OPEN })

const closeSupplier: Writes = ({ trailId, at, actorId, said }, rows) =>
  rows.change('Supplier', { id: trailId }, { closedById: actorId, closedAt: at, closedWhy: said['reason'] })

const stateLine: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('ProgrammeLine', {
    id: said['id'],
    lineId: said['lineId'],
    statedById: actorId,
    at,
    leftById: null,
    leftAt: null,
    leftWhy: null,
  })

const leaveLine: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'ProgrammeLine',
    { id: said['stated'] },
    { leftById: actorId, leftAt: at, leftWhy: said['reason'] },
  )

/**
 * What an earlier version kept in a programme is the works' from here on: its logs name their machine, and the programme
 * states the lines they stand on. In the installation's trail: in which department people belong to the works.
 */
const carryToWorks: Writes = (entry, rows) => {
  const { said } = entry
  for (const { id, machineId } of saidList(said['logs'])) rows.change('Log', { id }, { machineId })
  for (const line of saidList(said['lines'])) stateLine({ ...entry, said: line }, rows)
  for (const { personId, department } of saidList(said['people']))
    rows.change('Person', { id: personId }, { worksDepartment: department })
}

/** What is written of lines, machines and suppliers, and of the lines that programmes state. */
export const WORKS_WRITES = {
  'open-line': openLine,
  'close-line': closeLine,
  'open-machine': openMachine,
  'close-machine': closeMachine,
  'add-supplier': addSupplier,
  'close-supplier': closeSupplier,
  'state-line': stateLine,
  'leave-line': leaveLine,
  'carry-to-works': carryToWorks,
} as const
