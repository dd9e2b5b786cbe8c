/** One table whose rows are made by commands, and how its rows are found again in the trail's entries. */
export interface CoveredTable {
  /** A programme's entries speak of the rows of that programme; the installation's of all rows there are. */
  readonly of: 'programme' | 'installation'
  /** The column that names the programme a row belongs to. */
  readonly programme?: string
  /** Columns that name a row. */
  readonly key: readonly string[]
  /** Columns that name a row of which an older entry does not give the key. */
  readonly keyOfOlder?: readonly string[]
  /** A column by which later entries name the row. */
  readonly named?: string
  /** Columns whose value the next entry builds upon; they are remembered whole. */
  readonly builtUpon?: readonly string[]
  /** Every column that is compared with what the entries say. */
  readonly columns: readonly string[]
  /** Columns that are not compared, and why. */
  readonly leftOut?: Readonly<Record<string, string>>
  /** What a person calls such a row, and the columns that tell one from another. */
  readonly called: string
  readonly shows: readonly string[]
}

/**
 * The one place that says which tables and columns a verification compares. A test holds it
 * against the schema: a table or column that is neither here nor left out with a reason fails it.
 */
export const COVERED_TABLES = {
  Programme: {
    of: 'programme',
    programme: 'id',
    key: ['id'],
    columns: ['id', 'code', 'title', 'leadId', 'openedById', 'openedAt'],
    called: 'programme',
    shows: ['code'],
  },
  Membership: {
    of: 'programme',
    programme: 'programmeId',
    key: ['personId', 'department'],
    columns: ['personId', 'department', 'since'],
    called: 'membership',
    shows: ['personId', 'department'],
  },
  PlanItem: {
    of: 'programme',
    programme: 'programmeId',
    key: ['key'],
    builtUpon: ['setAside'],
    columns: ['key', 'stage', 'position', 'added', 'setAside', 'lesson'],
    called: 'item of the plan',
    shows: ['key'],
  },
  Revision: {
    of: 'programme',
    programme: 'programmeId',
    key: ['parameter', 'number'],
    columns: ['parameter', 'number', 'value', 'reason', 'authorId', 'at'],
    called: 'revision',
    shows: ['parameter', 'number'],
  },
  Requirement: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    columns: [
      'id',
      'limit',
      'authority',
      'document',
      'clause',
      'value',
      'relaxes',
      'reason',
      'lesson',
      'authorId',
      'at',
      'withdrawnById',
      'withdrawnAt',
    ],
    called: 'requirement',
    shows: ['limit', 'document'],
  },
  Evidence: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    columns: [
      'id',
      'itemKey',
      'kind',
      'note',
      'sha256',
      'fileName',
      'url',
      'addedById',
      'at',
      'withdrawnById',
      'withdrawnAt',
      'withdrawnWhy',
    ],
    called: 'evidence',
    shows: ['itemKey', 'kind', 'fileName', 'url'],
  },
  Lot: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    named: 'code',
    builtUpon: ['usedIn'],
    columns: [
      'id',
      'code',
      'kind',
      'part',
      'supplier',
      'dateCode',
      'quantity',
      'receivedOn',
      'storage',
      'supplierResult',
      'disposition',
      'usedIn',
      'addedById',
      'at',
    ],
    called: 'lot',
    shows: ['code'],
  },
  LotTest: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    columns: [
      'id',
      'lotId',
      'method',
      'testedOn',
      'testedBy',
      'instrumentId',
      'conditions',
      'addedById',
      'at',
      'withdrawnAt',
      'withdrawnWhy',
    ],
    called: 'test of a lot',
    shows: ['method', 'testedOn'],
  },
  Log: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    named: 'code',
    columns: ['id', 'code', 'characteristic', 'line', 'machine', 'instrumentId', 'addedById', 'at'],
    leftOut: { mapping: 'Only offered again at the next import; nothing is judged by it.' },
    called: 'log',
    shows: ['code'],
  },
  ReadingBatch: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    keyOfOlder: ['lotTestId', 'logId', 'at'],
    columns: ['id', 'lotTestId', 'logId', 'count', 'readings', 'sha256', 'addedById', 'at'],
    called: 'batch of readings',
    shows: ['count', 'at'],
  },
  Inspection: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    columns: [
      'id',
      'assembly',
      'inspectedOn',
      'inspector',
      'magnification',
      'jointsSeen',
      'defects',
      'note',
      'addedById',
      'at',
      'withdrawnAt',
      'withdrawnWhy',
    ],
    called: 'inspection',
    shows: ['assembly', 'inspectedOn'],
  },
  Record: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    columns: ['id', 'kind', 'data', 'addedById', 'at', 'withdrawnAt', 'withdrawnWhy'],
    called: 'record',
    shows: ['kind', 'at'],
  },
  Action: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    named: 'number',
    columns: [
      'id',
      'number',
      'itemKey',
      'from',
      'to',
      'kind',
      'question',
      'dueOn',
      'askedById',
      'askedAt',
      'answer',
      'answeredById',
      'answeredAt',
      'outcome',
      'outcomeWhy',
      'closedById',
      'closedAt',
    ],
    called: 'action',
    shows: ['number'],
  },
  Approval: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    keyOfOlder: ['itemKey', 'department', 'at'],
    columns: ['id', 'itemKey', 'department', 'personId', 'personName', 'digest', 'cover', 'at'],
    called: 'approval',
    shows: ['itemKey', 'department'],
  },
  Concession: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    named: 'number',
    columns: [
      'id',
      'number',
      'itemKey',
      'rule',
      'findingDigest',
      'findingData',
      'why',
      'quantity',
      'untilOn',
      'requestedById',
      'requestedAt',
      'designById',
      'designName',
      'designAt',
      'qualityById',
      'qualityName',
      'qualityAt',
      'refusedById',
      'refusedAt',
      'refusedWhy',
    ],
    called: 'concession',
    shows: ['number'],
  },
  GateSignature: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    keyOfOlder: ['stage', 'department', 'at'],
    columns: [
      'id',
      'stage',
      'department',
      'personId',
      'personName',
      'digest',
      'cover',
      'merkleRoot',
      'trailSeq',
      'headHash',
      'at',
    ],
    called: 'signature of a gate',
    shows: ['stage', 'department'],
  },
  OptionStudy: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    named: 'number',
    columns: [
      'id',
      'number',
      'itemKey',
      'title',
      'alternatives',
      'openedById',
      'openedAt',
      'adopted',
      'adoptedWhy',
      'adoptedById',
      'adoptedAt',
    ],
    called: 'option study',
    shows: ['number'],
  },
  Lesson: {
    of: 'programme',
    programme: 'programmeId',
    key: ['number'],
    columns: [
      'number',
      'title',
      'learnt',
      'source',
      'change',
      'proposedById',
      'proposedByName',
      'proposedAt',
      'decision',
      'decisionWhy',
      'decidedById',
      'decidedByName',
      'decidedAt',
      'retiredAt',
      'retiredWhy',
      'retiredById',
      'retiredByName',
    ],
    leftOut: { id: 'Entries and other rows name a lesson by its number; the id says nothing.' },
    called: 'lesson',
    shows: ['number'],
  },
  MachineToken: {
    of: 'programme',
    programme: 'programmeId',
    key: ['id'],
    columns: ['id', 'name', 'tokenHash', 'createdById', 'createdAt', 'revokedAt'],
    called: 'token of a machine',
    shows: ['name'],
  },
  Person: {
    of: 'installation',
    key: ['id'],
    columns: ['id', 'email', 'name', 'identity', 'auditor', 'administrator', 'disabledAt', 'createdAt'],
    leftOut: {
      passwordHash: 'A secret: nothing made of it goes into a trail, which leaves the installation.',
      credentialEpoch:
        'Counts what ended sessions; a session that it lets in is still checked against the person.',
      mustChangePassword: 'Bookkeeping of one-time passwords; signing in asks for the password either way.',
    },
    called: 'person',
    shows: ['name', 'email'],
  },
  Instrument: {
    of: 'installation',
    key: ['id'],
    columns: ['id', 'tag', 'measures', 'calibratedOn', 'dueOn', 'certificate', 'outOfUse', 'updatedAt'],
    called: 'instrument',
    shows: ['tag'],
  },
} as const satisfies Readonly<Record<string, CoveredTable>>

export type TableName = keyof typeof COVERED_TABLES

/** A column of a table, as far as it is compared. */
export type ColumnOf<Table extends TableName> = (typeof COVERED_TABLES)[Table]['columns'][number]

/** The declaration of a table, without its literal types. */
export const coveredTable = (table: TableName): CoveredTable => COVERED_TABLES[table]

/** The register of stored files: a row is compared with the entries that name its file, and with the file. */
export const COVERED_FILES = {
  table: 'StoredFile',
  columns: ['sha256', 'size', 'mediaType'],
  leftOut: { storedAt: 'Says when the file was last sent, for the clearing of uploads that nothing names.' },
} as const

/** Tables that no entry is compared with, and why. */
export const TABLES_LEFT_OUT: Readonly<Record<string, string>> = {
  Trail: 'The head of a chain: compared with the chain itself.',
  TrailEntry: 'The chain: verified by its hashes.',
  Idempotency: 'What a call answered, for whoever sends it twice; nothing is judged by it.',
  SignInThrottle: 'Failed sign-ins, counted beside the trail.',
  Verification: 'What the nightly verification found last; written anew by each.',
}
