import { randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { database } from '@/lib/db/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { registerFile } from '@/lib/evidence/register-file'
import type { InputOf } from '@/lib/commands/all-commands'
import { COMMAND_NAMES, faceOf, type CommandName } from '@/shared/commands/all-faces'
import type { WorksSubject } from '@/shared/works/works-kind'
import { partDigest } from '@/shared/works/part-content'
import { freshLot, PART_VALUES, trainingInput, VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, type Role, type World } from '@/tests/commands/world'

const MEMBERS: readonly Role[] = ['lead', 'design', 'production', 'quality']
const reason = 'Because the test needs it.'

/** These have a place of their own in the story: a gate can be signed before more is asked of its stage. */
const APART: readonly CommandName[] = ['open-programme', 'take-lead', 'hand-over-lead', 'sign-gate']

/** Tokens are the machines', and lots the suppliers'; of a programme there are only those of an earlier version. */
const AT_THE_WORKS: readonly CommandName[] = [
  'revoke-machine-token',
  'test-lot',
  'correct-lot',
  'correct-lot-test',
  'withdraw-lot-test',
  'dispose-lot',
]

/** Commands about one programme, as the policy table has them. */
export const PROGRAMME_COMMANDS = COMMAND_NAMES.filter(
  (name) => faceOf(name).may.scope === 'programme' && !AT_THE_WORKS.includes(name),
)

/** A programme opened with what lessons brought, in which every command about a programme was performed. */
export async function everyCommandOnce(): Promise<World> {
  const before = await openWorld()
  await acceptLessons(before)
  await byWhoMay(before, 'state-company-rule')
  await byWhoMay(before, 'prefer-value')
  const world = await openWorld()
  await byWhoMay(world, 'sign-gate')
  for (const command of PROGRAMME_COMMANDS.filter((name) => !APART.includes(name)))
    await byWhoMay(world, command)
  await attachFile(world, `A certificate ${randomUUID()}`)
  await passTheLead(world)
  return world
}

/** The trails of the people of the works and of the company rules, each with everything that it tells of. */
export async function whatIsKeptOnce(world: World): Promise<{ people: string; companyRules: string }> {
  const works = { kind: 'people', code: 'people' } as const
  const input = trainingInput()
  await world.must('quality', 'add-record', input)
  const subject = { kind_code: works }
  const { id: people } = await database().trailSubject.findUniqueOrThrow({ where: subject })
  const { id: record } = await database().record.findFirstOrThrow({ where: { trailId: people } })
  const values = { ...input.rows[0], certificate: 'C-2' }
  await world.must('quality', 'correct-record', { works, record, values, seen: 0, reason })
  for (const command of WITHDRAWN_TOO.filter((name) => faceOf(name).may.of === 'people'))
    await byWhoMay(world, command)
  await world.must('quality', 'withdraw-record', { works, record, reason })
  for (const command of WITHDRAWN_TOO.filter((name) => faceOf(name).may.of === 'company-rules'))
    await byWhoMay(world, command)
  const rules = await database().companyRule.findFirstOrThrow()
  return { people, companyRules: rules.trailId }
}

/** Of the people and of the company rules: each withdrawal makes first what it withdraws. */
const WITHDRAWN_TOO = COMMAND_NAMES.filter((name) =>
  ['people', 'company-rules'].includes(faceOf(name).may.of ?? ''),
)

/** A machine with everything that a machine's trail tells of, on a line of its own; all of it closed in the end. */
export async function somethingOfTheWorks(world: World): Promise<{ id: string; lineId: string }> {
  const readings = await VALID_INPUT['add-readings'](world, 'production')
  const { machine } = readings
  await world.must('production', 'add-readings', {
    ...readings,
    file: await storeFile(world, 'production', `at,bathC ${randomUUID()}`, {
      kind: 'machine',
      code: machine,
    }),
  })
  const token = await VALID_INPUT['create-machine-token'](world, 'production')
  const { result } = await world.must('production', 'create-machine-token', { ...token, machine })
  await world.must('production', 'revoke-machine-token', {
    works: { kind: 'machine', code: machine },
    token: result.token,
  })
  await world.must('production', 'close-machine', { machine, reason })
  const found = await database().machine.findUniqueOrThrow({
    where: { code: machine },
    include: { line: true },
  })
  await world.must('production', 'close-line', { line: found.line.code, reason })
  return found
}

/** A supplier with everything that a supplier's trail tells of; closed in the end. */
export async function somethingInStore(world: World): Promise<{ id: string }> {
  const { supplier, lot } = await freshLot(world)
  const works = { kind: 'supplier' as const, code: supplier }
  const test = { ...(await VALID_INPUT['test-lot'](world, 'quality')), works, lot }
  const { result: first } = await world.must('quality', 'test-lot', test)
  const sha256 = await storeFile(world, 'quality', `coverage ${randomUUID()}`, works)
  const { result: second } = await world.must('quality', 'test-lot', { ...test, file: sha256 })
  await world.must('quality', 'correct-lot', {
    ...(await VALID_INPUT['correct-lot'](world, 'quality')),
    works,
    lot,
    values: { ...(await VALID_INPUT['correct-lot'](world, 'quality')).values, supplier },
  })
  await world.must('quality', 'correct-lot-test', {
    ...(await VALID_INPUT['correct-lot-test'](world, 'quality')),
    works,
    test: first.test,
  })
  await world.must('quality', 'withdraw-lot-test', { works, test: second.test, reason })
  await world.must('quality', 'dispose-lot', { works, lot, verdict: 'accept', reason })
  await world.must('quality', 'receive-lot', {
    ...(await VALID_INPUT['receive-lot'](world, 'quality')),
    supplier,
  })
  const allocation = { supplier, lot, to: world.code, quantity: 30, outOfOrder: reason }
  await world.must('production', 'allocate-lot', allocation)
  const { result } = await world.must('production', 'allocate-lot', { ...allocation, quantity: 20 })
  await world.must('production', 'return-allocation', {
    supplier,
    allocation: result.allocation,
    quantity: 5,
    reason,
  })
  await supplierActions(world, works)
  await world.must('quality', 'close-supplier', { supplier, reason })
  return database().supplier.findUniqueOrThrow({ where: { code: supplier } })
}

/** One action of the supplier that is corrected and one that is withdrawn. */
async function supplierActions(world: World, works: WorksSubject): Promise<void> {
  const action = { supplier: works.code, part: 'test board', acceptedOn: '2026-01-20', action: 'A new bath.' }
  await world.must('quality', 'add-record', { works, kind: 'supplier-action', rows: [action, action] })
  const [one, other] = await database().record.findMany({ where: { subject: works }, select: { id: true } })
  const values = { ...action, action: 'A new bath and a new flux.' }
  await world.must('quality', 'correct-record', { works, record: one!.id, values, seen: 0, reason })
  await world.must('quality', 'withdraw-record', { works, record: other!.id, reason })
}

/** A part with everything that a part's trail tells of, withdrawn in the end. */
export async function somePartOfTheWorks(world: World): Promise<{ id: string }> {
  const { part, ...drawing } = await VALID_INPUT['attach-drawing'](world, 'design')
  const attached = await world.must('design', 'attach-drawing', {
    ...drawing,
    part,
    sha256: await storeFile(world, 'design', `A drawing ${randomUUID()}`, { kind: 'part', code: part }),
  })
  await world.must('design', 'withdraw-drawing', { part, evidence: String(attached.result.evidence), reason })
  await world.must('quality', 'approve-part', { part, digest: partDigest(part, PART_VALUES) })
  for (const leadMm of [0.65, 0.7])
    await world.must('design', 'revise-part', {
      part,
      values: { ...PART_VALUES, leadMm },
      seen: leadMm === 0.65 ? 1 : 2,
      reason,
    })
  await world.must('quality', 'withdraw-part', { part, reason })
  return database().part.findUniqueOrThrow({ where: { code: part }, select: { id: true } })
}

async function byWhoMay(world: World, command: CommandName): Promise<void> {
  for (const role of MEMBERS) {
    const outcome = await world.asUnparsed(role, command, await VALID_INPUT[command](world, role))
    if (outcome.ok) return
  }
  throw new Error(`Nobody could ${command}.`)
}

/** One lesson that brings an item and one that brings a limit. */
async function acceptLessons(world: World): Promise<void> {
  const proposed = {
    programme: world.code,
    learnt: 'It was learnt.',
    source: { kind: 'item' as const, key: 'programme-frame' },
  }
  const item: InputOf<'add-item'>['item'] = {
    stage: 'control',
    title: `Start of the shift ${randomUUID()}`,
    asks: 'From when on do readings count?',
    owner: 'production',
    approvers: ['quality'],
    evidence: '',
  }
  for (const change of [
    { kind: 'item' as const, item },
    { kind: 'limit' as const, limit: 'magnification-most', value: 5 },
  ]) {
    const { result } = await world.must('lead', 'propose-lesson', { ...proposed, title: 'A lesson', change })
    await world.must('quality', 'decide-lesson', {
      programme: world.code,
      lesson: result.lesson,
      accept: true,
      reason,
    })
  }
}

/** A file in the store and its register, sent by somebody for the programme or for something of the works; answers its hash. */
async function storeFile(
  world: World,
  who: keyof World['person'],
  text: string,
  works?: WorksSubject,
): Promise<string> {
  const content = await (await installedStore()).put(Readable.from([Buffer.from(text)]))
  const kind_code = works ?? { kind: 'programme', code: world.code }
  const { id } = await database().trailSubject.findUniqueOrThrow({ where: { kind_code } })
  await registerFile(content, { personId: world.person[who], trailId: id })
  return content.sha256
}

export async function attachFile(world: World, text: string): Promise<string> {
  const sha256 = await storeFile(world, 'design', text)
  await world.must('design', 'attach-evidence', {
    programme: world.code,
    item: 'laminate',
    kind: 'certificate',
    note: '',
    what: { sha256, fileName: 'certificate.txt' },
  })
  return sha256
}

/** The lead is handed on, and taken by quality once the new lead can no longer sign in. */
async function passTheLead(world: World): Promise<void> {
  await world.must('lead', 'hand-over-lead', { programme: world.code, personId: world.person.secondDesign })
  await world.must('administrator', 'disable-person', { personId: world.person.secondDesign, reason })
  await world.must('quality', 'take-lead', { programme: world.code, reason })
}
