import { randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { hashPassword } from '@/lib/auth/password'
import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { registerFile } from '@/lib/evidence/register-file'
import type { StoredContent } from '@/lib/evidence/store'
import { ALL_LIMITS } from '@/shared/catalogue/standard-plan'
import type { Department } from '@/shared/plan/department'
import type { InputOf } from '@/lib/commands/all-commands'
import type { CommandName } from '@/shared/commands/all-faces'
import { itemDigest, programmeInput, stageDigest, type Role, type World } from '@/tests/commands/world'

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
const freshLot = async (world: World): Promise<string> => {
  const code = `LOT-${unique()}`
  await world.must('quality', 'receive-lot', lotInput(world, code))
  return code
}
const lotInput = (world: World, code: string): InputOf<'receive-lot'> => ({
  programme: world.code,
  code,
  kind: 'bare board',
  part: 'test board',
  supplier: 'A supplier',
  dateCode: '2601',
  quantity: 100,
  receivedOn: '2026-01-05',
  temperatureC: 20,
  relativeHumidityPct: 40,
  packing: 'sealed',
  supplierResult: '',
})
const freshLog = async (world: World): Promise<string> => {
  const code = `LOG-${unique()}`
  await world.must('production', 'open-log', {
    programme: world.code,
    code,
    characteristic: 'bath-temperature',
    line: 'Line 1',
    machine: 'Wave 1',
    instrument: null,
  })
  return code
}
const testInput = (world: World, lot: string): InputOf<'test-lot'> => ({
  programme: world.code,
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
/** A file that this role's person sent for the programme; in the store too where the test has one. */
const sentFile = async (world: World, role: Role): Promise<string> => {
  const content: StoredContent = process.env.LIQUIDUS_DATA
    ? await (await installedStore()).put(Readable.from([Buffer.from(`A quotation ${unique()}`)]))
    : { sha256: sha256(), size: 12, mediaType: 'text/plain' }
  const { id } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  await registerFile(content, { personId: world.person[role], programmeId: id })
  return content.sha256
}
const openStudy = async (world: World): Promise<number> =>
  (await world.must('lead', 'open-option-study', studyInput(world))).result.study
/** Lets one person of a department be asked by name. */
const memberOf = (world: World, department: Department): string => world.person[SECOND[department]]

/** A failing finding: a rejected lot that went into an assembly. Each call makes it another finding. */
async function failingFinding(world: World): Promise<{ item: string; rule: string }> {
  const lot = await freshLot(world)
  await world.must('quality', 'dispose-lot', { programme: world.code, lot, verdict: 'reject', reason })
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

let hash: Promise<string> | undefined
const hashed = (): Promise<string> => (hash ??= hashPassword('another long password'))

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

  'receive-lot': async (world) => lotInput(world, `LOT-${unique()}`),
  'test-lot': async (world) => testInput(world, await freshLot(world)),
  'withdraw-lot-test': async (world) => {
    const tested = await world.must('quality', 'test-lot', testInput(world, await freshLot(world)))
    return { programme: world.code, test: tested.result.test, reason }
  },
  'dispose-lot': async (world) => ({
    programme: world.code,
    lot: await freshLot(world),
    verdict: 'accept',
    reason,
  }),
  'trace-lot': async (world) => ({
    programme: world.code,
    lot: await freshLot(world),
    assemblies: ['SN-1', 'SN-2'],
  }),

  'open-log': async (world) => ({
    programme: world.code,
    code: `LOG-${unique()}`,
    characteristic: 'bath-temperature',
    line: 'Line 1',
    machine: 'Wave 1',
    instrument: null,
  }),
  'add-readings': async (world) => ({
    programme: world.code,
    log: await freshLog(world),
    readings: { count: 1, columns: { at: [Date.parse('2026-01-08T08:00:00Z')], bathC: [248] } },
    file: null,
    mapping: null,
  }),
  'record-inspection': async (world) => inspectionInput(world),
  'withdraw-inspection': async (world) => {
    const input = inspectionInput(world)
    await world.must('quality', 'record-inspection', input)
    const { id } = await database().inspection.findFirstOrThrow({
      where: { assembly: input.inspections[0]?.assembly ?? '' },
    })
    return { programme: world.code, inspection: id, reason }
  },
  'add-record': async (world) => costInput(world),
  'withdraw-record': async (world) => {
    await world.must('production', 'add-record', costInput(world))
    const { id } = await database().record.findFirstOrThrow({ orderBy: { at: 'desc' } })
    return { programme: world.code, record: id, reason }
  },
  'create-machine-token': async (world) => ({
    programme: world.code,
    name: `Machine ${unique()}`,
    tokenHash: sha256(),
  }),
  'revoke-machine-token': async (world) => {
    const created = await world.must('production', 'create-machine-token', {
      programme: world.code,
      name: `Machine ${unique()}`,
      tokenHash: sha256(),
    })
    return { programme: world.code, token: created.result.token }
  },

  'ask-action': async (world, role) => {
    const from = departmentOf(role)
    return {
      programme: world.code,
      item: 'programme-frame',
      from,
      to: OTHER[from],
      person: memberOf(world, OTHER[from]),
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
  'request-concession': async (world) => {
    const failing = await failingFinding(world)
    return { programme: world.code, ...failing, why: 'It is tolerable.', quantity: 5, untilOn: null }
  },
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
  'reset-password': async (world) => ({ personId: await person(world), passwordHash: await hashed() }),
  'add-instrument': async () => ({ tag: `I-${unique()}`, measures: 'a length', ...CALIBRATION }),
  'calibrate-instrument': async (world) => ({
    instrument: await instrument(world),
    ...CALIBRATION,
    calibratedOn: '2026-02-02',
  }),
  'take-instrument-out-of-use': async (world) => ({ instrument: await instrument(world), reason }),
  'change-own-password': async () => ({ passwordHash: await hashed() }),
}
