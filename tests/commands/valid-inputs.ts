import { createHash, randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { registerFile } from '@/lib/evidence/register-file'
import { judgedProgramme } from '@/lib/programme/judged'
import { loadReview } from '@/lib/programme/load-review'
import { openBeside } from '@/lib/programme/open-beside'
import { addDays } from '@/shared/quantity/calendar'
import type { StoredContent } from '@/lib/evidence/store'
import { ALL_LIMITS } from '@/shared/catalogue/standard-plan'
import type { Department } from '@/shared/plan/department'
import { agendaOf } from '@/shared/reviews/agenda'
import { minutesContentOf } from '@/shared/reviews/minutes-content'
import type { InputOf } from '@/lib/commands/all-commands'
import type { CommandName } from '@/shared/commands/all-faces'
import { attachBoardFiles } from '@/tests/commands/attach-board-files'
import {
  itemDigest,
  noticeDigest,
  programmeInput,
  stageDigest,
  trailLength,
  type Role,
  type World,
} from '@/tests/commands/world'
import { partDigest } from '@/shared/works/part-content'
import { quickHash } from '@/tests/commands/quick-hash'

/** The department in which a role acts; outsiders try as if they were of design. */
export const departmentOf = (role: Role): Department =>
  role === 'production' || role === 'quality' ? role : 'design'
const SECOND = { design: 'secondDesign', production: 'secondProduction', quality: 'secondQuality' } as const
const OTHER: Record<Department, Department> = {
  design: 'production',
  production: 'quality',
  quality: 'design',
}

let counter = 0
const unique = (): string => `${++counter}-${randomUUID().slice(0, 6)}`
const sha256 = (): string => randomUUID().replaceAll('-', '').repeat(2)
const person = async (world: World): Promise<string> => {
  const name = unique()
  const added = await world.must('administrator', 'add-person', {
    email: `p${name}@test.invalid`,
    name: `Person ${name}`,
    rights: 'member',
    passwordHash: null,
  })
  return added.result.person
}
const emailOf = async (personId: string): Promise<string> =>
  (await database().person.findUniqueOrThrow({ where: { id: personId } })).email
const reason = 'Because the test needs it.'

/** An item of the world's own, so that no case depends on another. */
const freshItem = async (
  world: World,
  approvers: Department[] = ['design', 'production', 'quality'],
): Promise<string> => {
  const item: InputOf<'add-item'>['item'] = {
    stage: 'specification',
    title: `Item ${unique()}`,
    asks: 'Is it so?',
    owner: 'quality',
    approvers,
    evidence: '',
  }
  return (await world.must('lead', 'add-item', { programme: world.code, item })).result.item
}
/** As if the programme had been opened before the standard plan had the item. */
async function openedWithout({ code }: World, item: string): Promise<string> {
  await database().planItem.deleteMany({ where: { key: item, programme: { code } } })
  return item
}
const freshSupplier = async (world: World): Promise<string> => {
  const supplier = `Supplier ${unique()}`
  await world.must('quality', 'add-supplier', { supplier })
  return supplier
}
/** A lot in the store, by its supplier and code. */
export const freshLot = async (world: World): Promise<{ supplier: string; lot: string }> =>
  (await world.must('quality', 'receive-lot', lotInput(await freshSupplier(world), `LOT-${unique()}`))).result
const atSupplier = (code: string) => ({ works: { kind: 'supplier' as const, code } })
const allocationInput = (world: World, of: { supplier: string; lot: string }): InputOf<'allocate-lot'> => ({
  ...of,
  to: world.code,
  quantity: 40,
  outOfOrder: reason,
})
/** A lot that the programme holds pieces of. */
export const allocatedLot = async (
  world: World,
): Promise<{ supplier: string; lot: string; allocation: string }> =>
  (await world.must('production', 'allocate-lot', allocationInput(world, await freshLot(world)))).result
const lotInput = (supplier: string, code: string): InputOf<'receive-lot'> => ({
  supplier,
  code,
  kind: 'bare board',
  part: 'test board',
  dateCode: '2601',
  quantity: 100,
  receivedOn: '2026-01-05',
  temperatureC: 20,
  relativeHumidityPct: 40,
  packing: 'sealed',
  supplierResult: '',
})
const freshLine = async (world: World): Promise<string> => {
  const code = `L-${unique()}`
  await world.must('production', 'open-line', { code, name: 'A line' })
  return code
}
const freshMachine = async (world: World): Promise<string> => {
  const code = `M-${unique()}`
  await world.must('production', 'open-machine', { line: await freshLine(world), code, kind: 'wave' })
  return code
}
/** A component with leads, as a data sheet describes it. */
export const PART_VALUES: InputOf<'describe-part'>['values'] = {
  description: 'A resistor with leads',
  kind: 'component',
  leads: 2,
  leadShape: 'round',
  leadMm: 0.6,
  leadToleranceMm: 0.02,
  base: 'copper',
  barrier: 'none',
  coating: 'tin-matte',
  coatingUm: 8,
  heatMaxC: 260,
  heatMaxS: 10,
}
const freshPart = async (world: World): Promise<string> => {
  const code = `P-${unique()}`
  await world.must('design', 'describe-part', { code, values: PART_VALUES, reason })
  return code
}
const freshLog = async (world: World): Promise<{ machine: string; log: string }> => {
  const [machine, log] = [await freshMachine(world), `LOG-${unique()}`]
  await world.must('production', 'open-log', {
    machine,
    code: log,
    characteristic: 'bath-temperature',
    instrument: null,
  })
  return { machine, log }
}
const testInput = ({ supplier, lot }: { supplier: string; lot: string }): InputOf<'test-lot'> => ({
  ...atSupplier(supplier),
  lot,
  method: 'rotary-dip',
  testedOn: '2026-01-06',
  testedBy: 'A tester',
  instrument: null,
  conditions: { bathTemperatureC: 235, alloy: 'Sn60Pb40', flux: 'rosin-non-activated', ageing: 'none' },
  readings: {
    count: 1,
    columns: { specimen: ['1'], place: ['track'], outcome: ['wetted'], wettingTimeS: [1.1] },
  },
  file: null,
})
const inspectionInput = (world: World): InputOf<'record-inspection'> => ({
  programme: world.code,
  inspections: [
    {
      assembly: `A-${unique()}`,
      inspectedOn: '2026-01-07',
      inspector: 'An inspector',
      magnification: 4,
      jointsSeen: 100,
      defects: [],
      note: '',
    },
  ],
})
/** A kind of record that every department may keep. */
const costInput = (world: World): InputOf<'add-record'> => ({
  programme: world.code,
  kind: 'quality-cost',
  rows: [{ spentOn: '2026-01-02', costClass: 'appraisal', amount: 120, what: `Inspection ${unique()}` }],
})
const ask = async (world: World, from: Department, to: Department): Promise<number> => {
  const input: InputOf<'ask-action'> = {
    programme: world.code,
    item: 'programme-frame',
    from,
    to,
    kind: 'information',
    question: `Question ${unique()}?`,
    dueOn: '2099-12-31',
  }
  return (await world.must(SECOND[from], 'ask-action', input)).result.action
}
const answerInput = (world: World, action: number): InputOf<'answer-action'> => ({
  programme: world.code,
  action,
  feasible: 'yes',
  amounts: [
    { kind: 'piece', per: 'board', amount: 0.4 },
    { kind: 'tooling', amount: '120 to 150' },
    { kind: 'test', amount: null },
  ],
  comment: 'It is.',
})
const answered = async (world: World, from: Department): Promise<number> => {
  const number = await ask(world, from, OTHER[from])
  await world.must(SECOND[OTHER[from]], 'answer-action', answerInput(world, number))
  return number
}
const instrument = async (world: World): Promise<string> =>
  (
    await world.must('administrator', 'add-instrument', {
      tag: `I-${unique()}`,
      measures: 'a length',
      ...CALIBRATION,
    })
  ).result.instrument
const CALIBRATION = { calibratedOn: '2026-01-02', dueOn: '2027-01-02', certificate: 'C-1' }
/** A parameter that the role's department owns, and another value for it each time. */
const ownParameterOf = (role: Role): string =>
  role === 'production' ? 'annual-volume' : role === 'quality' ? 'defect-free-boards' : 'service-years'
const ownValueOf = (role: Role): number =>
  role === 'production' ? 1000 + ++counter : (role === 'quality' ? 90 : 12) + ++counter / 1000
const newestRevision = async (world: World, parameter: string): Promise<number> =>
  (
    await database().revision.findFirst({
      where: { parameter, programme: { code: world.code } },
      orderBy: { number: 'desc' },
    })
  )?.number ?? 0
const studyInput = (world: World): InputOf<'open-option-study'> => ({
  programme: world.code,
  item: 'programme-frame',
  title: `Study ${unique()}`,
  alternatives: ['Short', 'Long'].map((name, index) => ({
    name,
    note: '',
    values: { 'service-years': 11 + index + counter / 1000 },
    costs: [
      { kind: 'piece' as const, per: 'board' as const, amount: 1 },
      { kind: 'tooling' as const, per: 'once' as const, amount: '100 to 200' },
    ],
    limits: [
      {
        limit: 'magnification-most',
        authority: 'company' as const,
        document: 'Our rule',
        value: 5,
      },
    ],
  })),
})
/** What the works keep of people, by its kind and code. */
const PEOPLE = { kind: 'people', code: 'people' } as const
/** A file that this role's person sent for the programme, or for what of the works; in the store too where the test has one. */
const sentFile = async (
  world: World,
  role: keyof World['person'],
  of: { kind: string; code: string } = { kind: 'programme', code: world.code },
): Promise<string> => {
  const content: StoredContent = process.env.LIQUIDUS_DATA
    ? await (await installedStore()).put(Readable.from([Buffer.from(`A quotation ${unique()}`)]))
    : { sha256: sha256(), size: 12, mediaType: 'text/plain' }
  const { id } = await database().trailSubject.findUniqueOrThrow({ where: { kind_code: of } })
  await registerFile(content, { personId: world.person[role], trailId: id })
  return content.sha256
}
export const trainingInput = (over: Record<string, string> = {}): InputOf<'add-record'> => ({
  works: PEOPLE,
  kind: 'training',
  rows: [
    {
      worker: `Worker ${unique()}`,
      skill: 'hand-soldering',
      passedOn: '2026-01-05',
      expiresOn: '2027-01-04',
      certificate: `C-${unique()}`,
      ...over,
    },
  ],
})
/** A training recorded at the works; its id. */
const trained = async (world: World): Promise<string> => {
  const input = trainingInput()
  await world.must('production', 'add-record', input)
  const { id } = await database().record.findFirstOrThrow({
    where: { data: { path: ['certificate'], equals: input.rows[0]?.['certificate'] ?? '' } },
  })
  return id
}
const certificateInput = async (
  world: World,
  by: keyof World['person'],
): Promise<InputOf<'attach-certificate'>> => ({
  record: await trained(world),
  note: '',
  sha256: await sentFile(world, by, PEOPLE),
  fileName: 'certificate.txt',
})
const ruleInput = (): InputOf<'state-company-rule'> => ({
  limit: 'magnification-most',
  value: 5,
  document: `Handbook ${unique()}`,
  edition: 'edition 4',
  clause: '3.2',
  reason,
})
const statedRule = async (world: World): Promise<string> =>
  (await world.must('quality', 'state-company-rule', ruleInput())).result.rule
const preferenceInput = (): InputOf<'prefer-value'> => ({
  parameter: 'board-thickness',
  value: 1 + ++counter / 10_000,
  reason,
})
/** A value that the works prefer, of a parameter that a role may revise and that the programme specified otherwise. */
async function preferredOtherwise(world: World, role: Role): Promise<string> {
  const [parameter, value] = PREFERRED_OF[role] ?? ['board-thickness', 1.6]
  const seen = await newestRevision(world, parameter)
  const own = value + ++counter / 10_000
  await world.must('lead', 'revise-parameter', { programme: world.code, parameter, value: own, seen, reason })
  const preferred = { parameter, value: value + ++counter / 10_000, reason }
  return (await world.must('design', 'prefer-value', preferred)).result.preference
}
const PREFERRED_OF: Readonly<Partial<Record<Role, readonly [string, number]>>> = {
  production: ['flux-tank-volume', 20],
  quality: ['defect-free-boards', 90],
}
const openStudy = async (world: World): Promise<number> =>
  (await world.must('lead', 'open-option-study', studyInput(world))).result.study
/** Lets one person of a department be asked by name. */
const somebodyOf = (world: World, department: Department): string => world.person[SECOND[department]]

/** A failing finding: a rejected lot that went into an assembly. Each call makes it another finding. */
async function failingFinding(world: World): Promise<{ item: string; rule: string }> {
  const { supplier, lot } = await allocatedLot(world)
  await world.must('quality', 'dispose-lot', { ...atSupplier(supplier), lot, verdict: 'reject', reason })
  await world.must('production', 'trace-lot', { programme: world.code, lot, assemblies: [`SN-${unique()}`] })
  return { item: 'lots-released', rule: 'lots-traced' }
}

/** Nothing blocks the specification gate: every item of the stage is set aside, and the departments before have signed. */
async function gateReadyFor(world: World, department: Department): Promise<void> {
  const rows = await database().planItem.findMany({
    where: {
      programme: { code: world.code },
      stage: 'specification',
      setAside: { equals: Prisma.DbNull },
    },
  })
  for (const { key } of rows) {
    await world.must('secondDesign', 'propose-set-aside', { programme: world.code, item: key, reason })
    await world.must('secondQuality', 'decide-set-aside', {
      programme: world.code,
      item: key,
      agree: true,
      comment: '',
    })
  }
  const before = (['design', 'production'] as const).slice(
    0,
    ['design', 'production', 'quality'].indexOf(department),
  )
  for (const own of before) {
    await world.must(SECOND[own], 'sign-gate', {
      programme: world.code,
      stage: 'specification',
      department: own,
      digest: await stageDigest(world.code, 'specification'),
    })
  }
}

const reviewInput = (world: World, chair = world.person.lead): InputOf<'open-review'> => ({
  programme: world.code,
  title: `Review ${unique()}`,
  heldOn: '2026-01-09',
  chair,
  members: [world.person.quality],
  guests: [{ name: 'Gesine Aure', from: 'the supplier of boards' }],
})
const openedReview = async (world: World, chair?: string): Promise<number> =>
  (await world.must('secondDesign', 'open-review', reviewInput(world, chair))).result.review
const minuted = async (world: World, review: number): Promise<number> =>
  (
    await world.must('secondDesign', 'write-minute', {
      programme: world.code,
      review,
      kind: 'decision',
      about: { kind: 'item', key: 'programme-frame' },
      text: `Decided ${unique()}`,
    })
  ).result.line
/** The digest of the minutes as they stand, made apart from the command. */
const minutesDigest = async (world: World, number: number): Promise<string> => {
  const judged = await judgedProgramme(world.code)
  const id = judged?.state.programme.id ?? ''
  const review = await loadReview(database(), id, number)
  if (!judged || !review) throw new Error(`There is no review ${number}.`)
  const agenda = agendaOf(judged.state, judged.judgement, await openBeside(database(), id))
  return createHash('sha256')
    .update(minutesContentOf(world.code, review, agenda))
    .digest('hex')
}
/** Whoever the role is, they chair it; where they are no member, the lead does. */
const chairOf = (world: World, role: Role): string =>
  role === 'design' || role === 'production' || role === 'quality' ? world.person[role] : world.person.lead
const comment = async (world: World): Promise<number> =>
  (
    await world.must('secondDesign', 'add-comment', {
      programme: world.code,
      about: { kind: 'parameter', key: 'service-years' },
      text: `A remark ${unique()}`,
      mentions: [world.person.quality],
    })
  ).result.comment
const nonconformityInput = (
  world: World,
  owner: Department = 'production',
): InputOf<'open-nonconformity'> => ({
  programme: world.code,
  title: `Nonconformity ${unique()}`,
  found: 'Solder balls beside the connector.',
  foundOn: '2026-01-10',
  owner,
  place: { joint: 'T1-3', part: '', lot: '', assembly: 'SN-1', line: 'Line 1' },
  source: { kind: 'item', key: 'programme-frame' },
})
const nonconformity = async (world: World, owner?: Department): Promise<number> =>
  (await world.must('secondDesign', 'open-nonconformity', nonconformityInput(world, owner))).result
    .nonconformity
const stepInput = (
  world: World,
  number: number,
  kind: InputOf<'record-step'>['kind'] = 'containment',
): InputOf<'record-step'> => ({
  programme: world.code,
  nonconformity: number,
  kind,
  text: `Done ${unique()}`,
  doneOn: '2026-01-11',
  helped: kind === 'check' ? true : null,
})
/** A picture of one point, by whoever is to attach it; RFC 2083 names the eight bytes it begins with. */
const picture = async (world: World, by: string): Promise<string> => {
  const png = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==',
    'base64',
  )
  const content = await (await installedStore()).put(Readable.from([png]))
  const { id } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  await registerFile(content, { personId: by, trailId: id })
  return content.sha256
}

const lessonInput = (world: World): InputOf<'propose-lesson'> => ({
  programme: world.code,
  title: `Lesson ${unique()}`,
  learnt: 'The first readings of a shift are not yet the process.',
  source: { kind: 'item', key: 'programme-frame' },
  change: {
    kind: 'item',
    item: {
      stage: 'control',
      title: `Start of the shift ${unique()}`,
      asks: 'From when on do readings count?',
      owner: 'production',
      approvers: ['production', 'quality'],
      evidence: '',
    },
  },
})

/** Some limit of the catalogue. */
const someLimit = (): string => ALL_LIMITS[0]?.key ?? ''

/** Who of the programme does in an outsider’s place what comes before what the outsider tries. */
const memberOf = (role: Role) => (role === 'production' || role === 'quality' ? role : 'design')

const freshNotice = async (
  world: World,
  opener: 'design' | 'production' | 'quality' = 'design',
): Promise<number> => {
  const opened = await world.must(opener, 'open-change-notice', {
    programme: world.code,
    title: `Notice ${unique()}`,
    reason,
  })
  return opened.result.notice
}
const demand = () => ({
  kind: 'requirement' as const,
  limit: 'magnification-most',
  authority: 'company' as const,
  document: `Rule ${unique()}`,
  clause: '',
  value: 6,
  relaxes: false,
})
/** A change of the role's own in the notice; the lead's where the role is the lead. */
const propose = async (world: World, role: Role, notice: number): Promise<string> => {
  const proposed = await world.must(role === 'lead' ? 'lead' : memberOf(role), 'propose-change', {
    programme: world.code,
    notice,
    change: demand(),
    reason,
  })
  return proposed.result.change
}
/** Somebody who can stand in for the role, in a department that both belong to; and days that nobody named yet. */
async function delegationInput(world: World, role: Role): Promise<InputOf<'name-delegate'>> {
  const delegate = await person(world)
  const programme = `D-${unique()}`.toUpperCase()
  await world.must('secondDesign', 'open-programme', programmeInput(programme))
  const department = departmentOf(role)
  for (const personId of role === 'auditor' || role === 'administrator'
    ? [delegate]
    : [delegate, world.person[role]])
    await world.as('secondDesign', 'invite-member', { programme, email: await emailOf(personId), department })
  const fromOn = addDays('2090-01-01', 2 * ++counter)
  return { delegate, fromOn, toOn: addDays(fromOn, 1) }
}
const hasAddress = async (personId: string): Promise<boolean> =>
  (await database().calendarAddress.count({ where: { personId, revokedAt: null } })) > 0

const ANOTHERS_HASH = quickHash('another long password')

/** What a command does at once of what others do one by one, with an entry each beside its own. */
export const ACTS_WITHIN: Readonly<Partial<Record<CommandName, number>>> = {
  'approve-items': 1,
  'adopt-change-notice': 1,
  'adopt-from-board': 1,
}

/** What is right for these changes who leads, or what is signed: whoever tries them needs a programme of their own. */
export const CHANGES_ITS_WORLD: readonly CommandName[] = [
  'sign-gate',
  'hand-over-lead',
  'take-lead',
  'change-own-password',
]

/**
 * For each command, an input that is right in itself for somebody of this
 * role: what remains to decide is whether that person may.
 */
export const VALID_INPUT: {
  readonly [N in CommandName]: (world: World, role: Role) => Promise<InputOf<N>>
} = {
  'open-programme': async (_world, role) => ({
    ...programmeInput(`N-${unique()}`.toUpperCase()),
    department: departmentOf(role),
  }),
  'invite-member': async (world) => ({
    programme: world.code,
    email: await emailOf(await person(world)),
    department: 'production',
  }),
  'remove-member': async (world) => {
    const personId = await person(world)
    await world.must('lead', 'invite-member', {
      programme: world.code,
      email: await emailOf(personId),
      department: 'production',
    })
    return { programme: world.code, personId, department: 'production', reason }
  },
  'take-lead': async (world) => {
    const left = world.person.secondDesign
    await database().programme.update({ where: { code: world.code }, data: { leadId: left } })
    await database().person.update({ where: { id: left }, data: { disabledAt: new Date() } })
    return { programme: world.code, reason }
  },
  'hand-over-lead': async (world) => ({ programme: world.code, personId: world.person.secondDesign }),

  'add-item': async (world) => ({
    programme: world.code,
    item: {
      stage: 'control',
      title: `Item ${unique()}`,
      asks: 'Is it so?',
      owner: 'production',
      approvers: ['quality'],
      evidence: 'a photograph',
    },
  }),
  'take-up-item': async (world) => ({
    programme: world.code,
    item: await openedWithout(world, 'parts-list'),
    reason,
  }),
  'propose-set-aside': async (world) => ({ programme: world.code, item: await freshItem(world), reason }),
  'decide-set-aside': async (world) => {
    const item = await freshItem(world)
    await world.must('secondDesign', 'propose-set-aside', { programme: world.code, item, reason })
    return { programme: world.code, item, agree: true, comment: '' }
  },
  'restore-item': async (world) => {
    const item = await freshItem(world)
    await world.must('secondDesign', 'propose-set-aside', { programme: world.code, item, reason })
    return { programme: world.code, item, reason }
  },

  'revise-parameter': async (world, role) => {
    const parameter = ownParameterOf(role)
    return {
      programme: world.code,
      parameter,
      value: ownValueOf(role),
      seen: await newestRevision(world, parameter),
      reason,
    }
  },
  'state-requirement': async (world) => ({
    programme: world.code,
    limit: someLimit(),
    authority: 'customer',
    document: `Order ${unique()}`,
    clause: '3',
    value: 0.12,
    relaxes: false,
    reason,
  }),
  'withdraw-requirement': async (world) => {
    const document = `Order ${unique()}`
    await world.must('quality', 'state-requirement', {
      programme: world.code,
      limit: someLimit(),
      authority: 'customer',
      document,
      clause: '3',
      value: 0.12,
      relaxes: false,
      reason,
    })
    const { id } = await database().requirement.findFirstOrThrow({ where: { document } })
    return { programme: world.code, requirement: id, reason }
  },
  'open-option-study': async (world) => studyInput(world),
  'add-alternative': async (world) => ({
    programme: world.code,
    study: await openStudy(world),
    revision: 1,
    alternative: {
      name: 'Longest',
      note: 'One more.',
      values: { 'annual-volume': 7000 + ++counter },
      costs: [{ kind: 'piece', amount: null }],
    },
    reason,
  }),
  'change-alternative': async (world) => ({
    programme: world.code,
    study: await openStudy(world),
    revision: 1,
    name: 'Long',
    alternative: {
      name: 'Long',
      note: 'Cheaper.',
      values: { 'service-years': 31 + ++counter / 1000 },
      costs: [{ kind: 'piece', amount: 0.8 }],
    },
    reason,
  }),
  'withdraw-alternative': async (world) => ({
    programme: world.code,
    study: await openStudy(world),
    revision: 1,
    name: 'Long',
    reason,
  }),
  'set-money-ceiling': async (world) => {
    const newest = await database().moneyCeiling.findFirst({
      where: { programme: { code: world.code } },
      orderBy: { number: 'desc' },
    })
    return {
      programme: world.code,
      amount: 20_000 + ++counter,
      boards: 400,
      lots: 4,
      seen: newest?.number ?? 0,
      reason,
    }
  },
  'adopt-option': async (world, role) => {
    const parameter = ownParameterOf(role)
    const alternatives = ['Short', 'Long'].map((name) => ({
      name,
      note: '',
      values: { [parameter]: ownValueOf(role) },
      limits:
        role === 'production'
          ? []
          : [
              {
                limit: 'magnification-most',
                authority: 'company' as const,
                document: `Rule ${unique()}`,
                value: 5,
              },
            ],
      costs: [{ kind: 'piece' as const, per: 'board' as const, amount: 1 }],
    }))
    const opened = await world.must('lead', 'open-option-study', { ...studyInput(world), alternatives })
    return {
      programme: world.code,
      study: opened.result.study,
      revision: 1,
      alternative: 'Long',
      seen: { [parameter]: await newestRevision(world, parameter) },
      reason,
    }
  },

  'attach-evidence': async (world) => ({
    programme: world.code,
    item: 'programme-frame',
    kind: 'drawing',
    note: '',
    what: { url: `https://example.invalid/${unique()}` },
  }),
  'confirm-board-files': async (world) => ({
    programme: world.code,
    evidence: await attachBoardFiles(world),
    files: [{ name: 'top.gbr', role: 'copper-top' }],
  }),
  'adopt-from-board': async (world, role) => {
    const parameter = ownParameterOf(role)
    const seen = await newestRevision(world, parameter)
    return {
      programme: world.code,
      evidence: await attachBoardFiles(world),
      values: [{ parameter, value: ownValueOf(role), seen }],
      reason,
    }
  },
  'withdraw-evidence': async (world, role) => {
    const by =
      role === 'lead' || role === 'design' || role === 'production' || role === 'quality'
        ? role
        : 'secondDesign'
    const attached = await world.must(by === 'lead' ? 'lead' : by, 'attach-evidence', {
      programme: world.code,
      item: 'programme-frame',
      kind: 'drawing',
      note: '',
      what: { url: `https://example.invalid/${unique()}` },
    })
    return { programme: world.code, evidence: attached.result.evidence, reason }
  },

  'open-review': async (world) => reviewInput(world),
  'record-attendance': async (world) => {
    const { chair, members } = reviewInput(world)
    return { programme: world.code, review: await openedReview(world), chair, members, guests: [] }
  },
  'write-minute': async (world) => ({
    programme: world.code,
    review: await openedReview(world),
    kind: 'note',
    about: { kind: 'finding', key: 'lead-clearance' },
    text: `Noted ${unique()}`,
  }),
  'strike-minute': async (world) => {
    const review = await openedReview(world)
    return {
      programme: world.code,
      review,
      line: await minuted(world, review),
      instead: 'What was decided.',
      reason,
    }
  },
  'close-review': async (world, role) => {
    const review = await openedReview(world, chairOf(world, role))
    await minuted(world, review)
    return { programme: world.code, review, digest: await minutesDigest(world, review) }
  },
  'name-minutes': async (world) => {
    const review = await openedReview(world, world.person.secondQuality)
    await minuted(world, review)
    await world.must('secondQuality', 'close-review', {
      programme: world.code,
      review,
      digest: await minutesDigest(world, review),
    })
    return { programme: world.code, review, item: 'programme-frame', note: '' }
  },
  'add-comment': async (world) => ({
    programme: world.code,
    about: { kind: 'item', key: 'programme-frame' },
    text: `A remark ${unique()}`,
    mentions: [world.person.production],
  }),
  'resolve-comment': async (world) => ({ programme: world.code, comment: await comment(world) }),
  'open-nonconformity': async (world) => nonconformityInput(world),
  'record-step': async (world) => {
    const number = await nonconformity(world)
    await world.must('secondProduction', 'record-step', stepInput(world, number, 'correction'))
    return stepInput(world, number, 'check')
  },
  'withdraw-step': async (world, role) => {
    const by = role === 'auditor' || role === 'administrator' || role === 'stranger' ? 'secondDesign' : role
    const number = await nonconformity(world, departmentOf(role))
    const { id } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
    await world.must(by, 'record-step', stepInput(world, number))
    const step = await database().nonconformityStep.findFirstOrThrow({
      where: { programmeId: id, nonconformity: number },
    })
    return { programme: world.code, step: step.id, reason }
  },
  'attach-picture': async (world, role) => ({
    programme: world.code,
    about: { kind: 'nonconformity', number: await nonconformity(world) },
    note: '',
    sha256: await picture(world, world.person[role]),
    fileName: 'joint.png',
  }),

  'add-supplier': async () => ({ supplier: `Supplier ${unique()}` }),
  'close-supplier': async (world) => ({ supplier: await freshSupplier(world), reason }),
  'receive-lot': async (world) => lotInput(await freshSupplier(world), `LOT-${unique()}`),
  'allocate-lot': async (world) => allocationInput(world, await freshLot(world)),
  'return-allocation': async (world) => {
    const { supplier, allocation } = await allocatedLot(world)
    return { supplier, allocation, quantity: 10, reason }
  },
  'test-lot': async (world) => testInput(await freshLot(world)),
  'correct-lot': async (world) => {
    const { supplier, lot } = await freshLot(world)
    return {
      ...atSupplier(supplier),
      lot,
      values: {
        kind: 'bare board',
        part: 'test board',
        supplier,
        dateCode: '2601',
        quantity: 120,
        receivedOn: '2026-01-05',
        expiresOn: '2027-01-05',
        temperatureC: 20,
        relativeHumidityPct: 40,
        packing: 'sealed',
        supplierResult: 'Wetted in 1.2 s',
      },
      seen: 0,
      reason,
    }
  },
  'correct-lot-test': async (world) => {
    const lot = await freshLot(world)
    const tested = await world.must('quality', 'test-lot', testInput(lot))
    return {
      ...atSupplier(lot.supplier),
      test: tested.result.test,
      values: { testedOn: '2026-01-06', testedBy: 'Another tester' },
      instrument: null,
      conditions: { bathTemperatureC: 240, alloy: 'Sn60Pb40', flux: 'rosin-non-activated', ageing: 'none' },
      seen: 0,
      reason,
    }
  },
  'withdraw-lot-test': async (world) => {
    const lot = await freshLot(world)
    const tested = await world.must('quality', 'test-lot', testInput(lot))
    return { ...atSupplier(lot.supplier), test: tested.result.test, reason }
  },
  'dispose-lot': async (world) => {
    const { supplier, lot } = await freshLot(world)
    return { ...atSupplier(supplier), lot, verdict: 'accept', reason }
  },
  'trace-lot': async (world) => ({
    programme: world.code,
    lot: (await allocatedLot(world)).lot,
    assemblies: ['SN-1', 'SN-2'],
  }),

  'state-company-rule': async (world) => ({ ...ruleInput(), replaces: await statedRule(world) }),
  'withdraw-company-rule': async (world) => ({ rule: await statedRule(world), reason }),
  'prefer-value': async () => preferenceInput(),
  'withdraw-preference': async (world) => {
    const { result } = await world.must('design', 'prefer-value', preferenceInput())
    return { preference: result.preference, reason }
  },
  'take-company-rule': async (world) => ({
    programme: world.code,
    rule: await statedRule(world),
    standing: 'stated',
  }),
  'keep-own-rule': async (world) => ({
    programme: world.code,
    rule: await statedRule(world),
    standing: 'stated',
    reason,
  }),
  'keep-own-value': async (world, role) => ({
    programme: world.code,
    preference: await preferredOtherwise(world, role),
    reason,
  }),
  'attach-certificate': async (world, role) => certificateInput(world, role),
  'withdraw-certificate': async (world) => {
    const attached = await world.must(
      'quality',
      'attach-certificate',
      await certificateInput(world, 'quality'),
    )
    return { evidence: attached.result.evidence, reason }
  },

  'open-line': async () => ({ code: `L-${unique()}`, name: 'A line' }),
  'close-line': async (world) => ({ line: await freshLine(world), reason }),
  'open-machine': async (world) => ({ line: await freshLine(world), code: `M-${unique()}`, kind: 'wave' }),
  'close-machine': async (world) => ({ machine: await freshMachine(world), reason }),
  'state-line': async (world) => ({ programme: world.code, line: await freshLine(world) }),
  'leave-line': async (world) => {
    const line = await freshLine(world)
    await world.must('production', 'state-line', { programme: world.code, line })
    return { programme: world.code, line, reason }
  },
  'open-log': async (world) => ({
    machine: await freshMachine(world),
    code: `LOG-${unique()}`,
    characteristic: 'bath-temperature',
    instrument: null,
    everyH: 4,
    onlyFor: world.code,
  }),
  'add-readings': async (world) => ({
    ...(await freshLog(world)),
    readings: { count: 1, columns: { at: [Date.parse('2026-01-08T08:00:00Z')], bathC: [248] } },
    file: null,
    mapping: null,
  }),
  'record-inspection': async (world) => inspectionInput(world),
  'correct-inspection': async (world) => {
    const input = inspectionInput(world)
    await world.must('quality', 'record-inspection', input)
    const [seen] = input.inspections
    const { id } = await database().inspection.findFirstOrThrow({
      where: { assembly: seen?.assembly ?? '' },
    })
    return {
      programme: world.code,
      inspection: id,
      values: { ...seen!, jointsSeen: 120, defects: [{ kind: 'bridge', joint: 'T1-3' }] },
      seen: 0,
      reason,
    }
  },
  'withdraw-inspection': async (world) => {
    const input = inspectionInput(world)
    await world.must('quality', 'record-inspection', input)
    const { id } = await database().inspection.findFirstOrThrow({
      where: { assembly: input.inspections[0]?.assembly ?? '' },
    })
    return { programme: world.code, inspection: id, reason }
  },
  'add-record': async (world) => costInput(world),
  'correct-record': async (world) => {
    const input = costInput(world)
    await world.must('production', 'add-record', input)
    const { id } = await database().record.findFirstOrThrow({ orderBy: { at: 'desc' } })
    return { programme: world.code, record: id, values: { ...input.rows[0], amount: 125 }, seen: 0, reason }
  },
  'withdraw-record': async (world) => {
    await world.must('production', 'add-record', costInput(world))
    const { id } = await database().record.findFirstOrThrow({ orderBy: { at: 'desc' } })
    return { programme: world.code, record: id, reason }
  },
  'create-machine-token': async (world) => ({
    machine: await freshMachine(world),
    name: `Machine ${unique()}`,
    tokenHash: sha256(),
  }),
  'revoke-machine-token': async (world) => {
    const machine = await freshMachine(world)
    const created = await world.must('production', 'create-machine-token', {
      machine,
      name: `Machine ${unique()}`,
      tokenHash: sha256(),
    })
    return { works: { kind: 'machine', code: machine }, token: created.result.token }
  },

  'ask-action': async (world, role) => {
    const from = departmentOf(role)
    return {
      programme: world.code,
      item: 'programme-frame',
      from,
      to: OTHER[from],
      person: somebodyOf(world, OTHER[from]),
      study: await openStudy(world),
      kind: 'cost',
      question: `Question ${unique()}?`,
      dueOn: '2099-12-31',
    }
  },
  'answer-action': async (world, role) => {
    const to = departmentOf(role)
    return answerInput(world, await ask(world, OTHER[to], to))
  },
  'attach-answer-file': async (world, role) => {
    const to = departmentOf(role)
    return {
      programme: world.code,
      action: await ask(world, OTHER[to], to),
      sha256: await sentFile(world, role),
      fileName: 'quotation.txt',
      note: '',
    }
  },
  'accept-answer': async (world, role) => ({
    programme: world.code,
    action: await answered(world, departmentOf(role)),
    comment: '',
  }),
  'return-answer': async (world, role) => ({
    programme: world.code,
    action: await answered(world, departmentOf(role)),
    comment: 'Which lead time?',
  }),
  'withdraw-action': async (world, role) => {
    const from = departmentOf(role)
    return { programme: world.code, action: await ask(world, from, OTHER[from]), reason }
  },

  'open-change-notice': async (world) => ({
    programme: world.code,
    title: `Notice ${unique()}`,
    reason,
    costPerBoard: null,
    costOnce: 120,
  }),
  'propose-change': async (world) => ({
    programme: world.code,
    notice: await freshNotice(world),
    change: demand(),
    reason,
  }),
  'cost-change-notice': async (world) => ({
    programme: world.code,
    notice: await freshNotice(world),
    costPerBoard: 0.35,
    costOnce: null,
    reason,
  }),
  'drop-change': async (world, role) => {
    const notice = await freshNotice(world)
    return { programme: world.code, notice, change: await propose(world, role, notice) }
  },
  'answer-change-notice': async (world, role) => {
    const notice = await freshNotice(world)
    await propose(world, role, notice)
    return {
      programme: world.code,
      notice,
      department: departmentOf(role),
      answer: 'agree',
      reason: '',
      digest: await noticeDigest(world.code, notice),
    }
  },
  'adopt-change-notice': async (world) => {
    const notice = await freshNotice(world)
    await propose(world, 'production', notice)
    const digest = await noticeDigest(world.code, notice)
    for (const own of ['design', 'production', 'quality'] as const)
      await world.must(own, 'answer-change-notice', {
        programme: world.code,
        notice,
        department: own,
        answer: 'agree',
        digest,
      })
    return { programme: world.code, notice, digest, reason }
  },
  'close-change-notice': async (world, role) => ({
    programme: world.code,
    notice: await freshNotice(world, memberOf(role)),
    disposition: 'withdrawn',
    reason,
  }),
  'approve-item': async (world, role) => {
    const item = await freshItem(world)
    return {
      programme: world.code,
      item,
      department: departmentOf(role),
      digest: await itemDigest(world.code, item),
      comment: '',
    }
  },
  'approve-items': async (world, role) => {
    const item = await freshItem(world)
    return {
      programme: world.code,
      department: departmentOf(role),
      seen: await trailLength(world.code),
      items: [{ item, digest: await itemDigest(world.code, item) }],
      comment: '',
    }
  },
  'request-concession': async (world) => {
    const failing = await failingFinding(world)
    return { programme: world.code, ...failing, why: 'It is tolerable.', quantity: 5, untilOn: null }
  },
  'request-deviation': async (world) => ({
    programme: world.code,
    item: 'lots-released',
    rule: 'lots-traced',
    departure: { kind: 'parts', way: 'fails', parts: [`LOT-${unique()}`] },
    why: 'It is tolerable.',
    quantity: 5,
    untilOn: null,
  }),
  'grant-concession': async (world, role) => {
    const failing = await failingFinding(world)
    const asked = await world.must('secondProduction', 'request-concession', {
      programme: world.code,
      ...failing,
      why: 'It is tolerable.',
      quantity: 5,
      untilOn: null,
    })
    return { programme: world.code, concession: asked.result.concession, department: departmentOf(role) }
  },
  'refuse-concession': async (world) => {
    const failing = await failingFinding(world)
    const asked = await world.must('secondProduction', 'request-concession', {
      programme: world.code,
      ...failing,
      why: 'It is tolerable.',
      quantity: 5,
      untilOn: null,
    })
    return { programme: world.code, concession: asked.result.concession, reason }
  },
  'sign-gate': async (world, role) => {
    await gateReadyFor(world, departmentOf(role))
    return {
      programme: world.code,
      stage: 'specification',
      department: departmentOf(role),
      digest: await stageDigest(world.code, 'specification'),
    }
  },

  'propose-lesson': async (world) => lessonInput(world),
  'retire-lesson': async (world) => {
    const proposed = await world.must('secondDesign', 'propose-lesson', lessonInput(world))
    const lesson = proposed.result.lesson
    await world.must('quality', 'decide-lesson', { programme: world.code, lesson, accept: true, reason })
    return { programme: world.code, lesson, reason }
  },
  'decide-lesson': async (world) => {
    const proposed = await world.must('secondDesign', 'propose-lesson', lessonInput(world))
    return { programme: world.code, lesson: proposed.result.lesson, accept: false, reason }
  },

  'describe-part': async () => ({ code: `P-${unique()}`, values: PART_VALUES, reason }),
  'revise-part': async (world) => ({
    part: await freshPart(world),
    values: { ...PART_VALUES, leadMm: 0.65 },
    seen: 1,
    reason,
  }),
  'approve-part': async (world) => {
    const part = await freshPart(world)
    return { part, digest: partDigest(part, PART_VALUES) }
  },
  'withdraw-part': async (world) => ({ part: await freshPart(world), reason }),
  'reinstate-part': async (world) => {
    const part = await freshPart(world)
    await world.must('quality', 'withdraw-part', { part, reason })
    return { part, reason }
  },
  'attach-drawing': async (world, role) => {
    const part = await freshPart(world)
    return {
      part,
      note: 'Issue 2',
      sha256: await sentFile(world, role, { kind: 'part', code: part }),
      fileName: 'drawing.txt',
    }
  },
  'withdraw-drawing': async (world) => {
    const input = await VALID_INPUT['attach-drawing'](world, 'design')
    const { result } = await world.must('design', 'attach-drawing', input)
    return { part: input.part, evidence: String(result.evidence), reason }
  },

  'add-person': async () => ({
    email: `p${unique()}@test.invalid`,
    name: 'A person',
    rights: 'member',
    passwordHash: null,
  }),
  'change-person': async (world) => ({
    personId: await person(world),
    email: `c${unique()}@test.invalid`,
    name: 'Changed',
    rights: 'member',
  }),
  'disable-person': async (world) => ({ personId: await person(world), reason }),
  'enable-person': async (world) => {
    const personId = await person(world)
    await world.must('administrator', 'disable-person', { personId, reason })
    return { personId, reason }
  },
  'reset-password': async (world) => ({ personId: await person(world), passwordHash: ANOTHERS_HASH }),
  'add-instrument': async () => ({ tag: `I-${unique()}`, measures: 'a length', ...CALIBRATION }),
  'calibrate-instrument': async (world) => ({
    instrument: await instrument(world),
    ...CALIBRATION,
    calibratedOn: '2026-02-02',
  }),
  'take-instrument-out-of-use': async (world) => ({ instrument: await instrument(world), reason }),
  'change-own-password': () => Promise.resolve({ passwordHash: ANOTHERS_HASH }),

  'name-delegate': delegationInput,
  'end-delegation': async (world, role) => {
    const by = role === 'auditor' || role === 'administrator' ? 'design' : role
    const named = await world.must(by, 'name-delegate', await delegationInput(world, by))
    return { delegation: named.result.delegation }
  },
  'choose-digest': async () => ({ wanted: true }),
  'create-calendar-address': async (world, role) => {
    if (await hasAddress(world.person[role])) await world.must(role, 'revoke-calendar-address', {})
    return { tokenHash: sha256() }
  },
  'revoke-calendar-address': async (world, role) => {
    if (role !== 'auditor' && role !== 'administrator' && !(await hasAddress(world.person[role])))
      await world.must(role, 'create-calendar-address', { tokenHash: sha256() })
    return {}
  },
}
