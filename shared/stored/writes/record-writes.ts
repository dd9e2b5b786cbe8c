import { saidList, without, type Writes } from '../spoken-entry'
import { writeBatch } from './reading-writes'

const NOT_WITHDRAWN = { withdrawnAt: null, withdrawnWhy: null } as const

const attachEvidence: Writes = ({ at, actorId, said }, rows) => {
  rows.insert('Evidence', {
    id: said['id'],
    itemKey: said['itemKey'] ?? null,
    about: said['about'] ?? null,
    kind: said['kind'],
    note: said['note'],
    sha256: said['sha256'],
    fileName: said['fileName'],
    url: said['url'] ?? null,
    addedById: actorId,
    at,
    withdrawnById: null,
    ...NOT_WITHDRAWN,
  })
  rows.nameFile(said['sha256'], said['size'], said['mediaType'])
}

const withdrawEvidence: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'Evidence',
    { id: said['evidence'] },
    { withdrawnById: actorId, withdrawnAt: at, withdrawnWhy: said['reason'] },
  )

const confirmBoardFiles: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('BoardConfirmation', {
    id: said['id'],
    evidenceId: said['evidence'],
    files: said['files'],
    byId: actorId,
    at,
  })

const receiveLot: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Lot', {
    id: said['id'],
    code: said['code'],
    kind: said['kind'],
    part: said['part'],
    supplier: said['supplier'],
    dateCode: said['dateCode'],
    quantity: said['quantity'],
    receivedOn: said['receivedOn'],
    storage: said['storage'],
    supplierResult: said['supplierResult'],
    // An earlier version did not ask for it.
    expiresOn: said['expiresOn'] ?? null,
    disposition: null,
    usedIn: [],
    addedById: actorId,
    at,
  })

const disposeLot: Writes = ({ said }, rows) =>
  rows.change(
    'Lot',
    { code: said['lot'] },
    {
      disposition: {
        verdict: said['verdict'] ?? null,
        by: said['by'] ?? null,
        on: said['on'] ?? null,
        reason: said['reason'] ?? null,
      },
    },
  )

const allocateLot: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('LotAllocation', {
    id: said['id'],
    lotId: said['lotId'],
    programmeId: said['programmeId'],
    quantity: said['quantity'],
    outOfOrder: said['outOfOrder'],
    allocatedById: actorId,
    at,
    returned: 0,
    returnedById: null,
    returnedAt: null,
    returnedWhy: null,
  })

const returnAllocation: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'LotAllocation',
    { id: said['allocation'] },
    { returned: said['returned'], returnedById: actorId, returnedAt: at, returnedWhy: said['reason'] },
  )

/** Of a lot of the works a use has a row of its own; a lot that is recorded in the programme names its assemblies itself. */
const traceLot: Writes = ({ at, actorId, said }, rows) => {
  if (said['lotId'] !== undefined) {
    const { id, lotId, assemblies } = said
    rows.insert('LotUse', { id, lotId, assemblies, addedById: actorId, at })
    return
  }
  const lot = { code: said['lot'] }
  const [before, added] = [rows.valueOf('Lot', lot, 'usedIn'), said['assemblies']]
  if (Array.isArray(before) && Array.isArray(added))
    rows.change('Lot', lot, { usedIn: [...before, ...added] })
}

const testLot: Writes = (entry, rows) => {
  const { at, actorId, said } = entry
  rows.insert('LotTest', {
    id: said['id'],
    lotId: said['lotId'],
    method: said['method'],
    testedOn: said['testedOn'],
    testedBy: said['testedBy'],
    instrumentId: said['instrumentId'],
    conditions: said['conditions'],
    addedById: actorId,
    at,
    ...NOT_WITHDRAWN,
  })
  writeBatch(entry, rows, { lotTestId: said['id'], logId: null })
}

const withdrawLotTest: Writes = ({ at, said }, rows) =>
  rows.change('LotTest', { id: said['test'] }, { withdrawnAt: at, withdrawnWhy: said['reason'] })

const openLog: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('Log', {
    id: said['id'],
    code: said['code'],
    characteristic: said['characteristic'],
    line: said['line'],
    machine: said['machine'],
    // Before machines had logs of their own, a log stood on none until it was carried there.
    machineId: said['machineId'] ?? null,
    onlyForId: said['onlyForId'] ?? null,
    everyH: said['everyH'] ?? null,
    instrumentId: said['instrumentId'],
    addedById: actorId,
    at,
  })

const addReadings: Writes = (entry, rows) =>
  writeBatch(entry, rows, {
    lotTestId: null,
    logId: entry.said['logId'] ?? rows.valueOf('Log', { code: entry.said['log'] }, 'id'),
  })

const recordInspection: Writes = ({ at, actorId, said }, rows) => {
  for (const seen of saidList(said['inspections'])) {
    rows.insert('Inspection', {
      id: seen['id'],
      assembly: seen['assembly'],
      inspectedOn: seen['inspectedOn'],
      inspector: seen['inspector'],
      magnification: seen['magnification'],
      jointsSeen: seen['jointsSeen'],
      defects: seen['defects'],
      note: seen['note'],
      addedById: actorId,
      at,
      ...NOT_WITHDRAWN,
    })
  }
}

const withdrawInspection: Writes = ({ at, said }, rows) =>
  rows.change('Inspection', { id: said['inspection'] }, { withdrawnAt: at, withdrawnWhy: said['reason'] })

const addRecord: Writes = ({ at, actorId, said }, rows) => {
  for (const record of saidList(said['records'])) {
    rows.insert('Record', {
      id: record['id'],
      kind: said['kind'],
      data: without(record, 'id'),
      addedById: actorId,
      at,
      ...NOT_WITHDRAWN,
    })
  }
}

const withdrawRecord: Writes = ({ at, said }, rows) =>
  rows.change('Record', { id: said['record'] }, { withdrawnAt: at, withdrawnWhy: said['reason'] })

const correct: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.insert('Correction', {
    id: said['correction'],
    of: said['of'],
    subjectId: said['subjectId'],
    number: said['number'],
    before: said['before'],
    values: said['after'],
    reason: said['reason'],
    authorId: actorId,
    authorName: actorName,
    at,
  })

const createMachineToken: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('MachineToken', {
    id: said['token'],
    name: said['name'],
    tokenHash: said['tokenHash'],
    createdById: actorId,
    createdAt: at,
    revokedAt: null,
  })

const revokeMachineToken: Writes = ({ at, said }, rows) =>
  rows.change('MachineToken', { id: said['token'] }, { revokedAt: at })

/** What is written of evidence, lots, logs, inspections and records. */
export const RECORD_WRITES = {
  'attach-evidence': attachEvidence,
  'confirm-board-files': confirmBoardFiles,
  'attach-picture': attachEvidence,
  'name-minutes': attachEvidence,
  'withdraw-evidence': withdrawEvidence,
  'attach-certificate': attachEvidence,
  'withdraw-certificate': withdrawEvidence,
  'receive-lot': receiveLot,
  'dispose-lot': disposeLot,
  'allocate-lot': allocateLot,
  'return-allocation': returnAllocation,
  'trace-lot': traceLot,
  'test-lot': testLot,
  'withdraw-lot-test': withdrawLotTest,
  'open-log': openLog,
  'add-readings': addReadings,
  'record-inspection': recordInspection,
  'withdraw-inspection': withdrawInspection,
  'add-record': addRecord,
  'withdraw-record': withdrawRecord,
  'correct-lot': correct,
  'correct-lot-test': correct,
  'correct-inspection': correct,
  'correct-record': correct,
  'create-machine-token': createMachineToken,
  'revoke-machine-token': revokeMachineToken,
} as const
