import { randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { database } from '@/lib/db/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { registerFile } from '@/lib/evidence/register-file'
import type { InputOf } from '@/lib/commands/all-commands'
import { COMMAND_NAMES, faceOf, type CommandName } from '@/shared/commands/all-faces'
import { partDigest } from '@/shared/works/part-content'
import { PART_VALUES, VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, type Role, type World } from '@/tests/commands/world'

const MEMBERS: readonly Role[] = ['lead', 'design', 'production', 'quality']
const reason = 'Because the test needs it.'

/** These have a place of their own in the story: a gate can be signed before more is asked of its stage. */
const APART: readonly CommandName[] = ['open-programme', 'take-lead', 'hand-over-lead', 'sign-gate']

/** Commands about one programme, as the policy table has them. */
export const PROGRAMME_COMMANDS = COMMAND_NAMES.filter(
  (name) =>
    faceOf(name).may.scope === 'programme' &&
    // Tokens are the machines'; of a programme there are only those of an earlier version.
    name !== 'revoke-machine-token',
)

/** A programme opened with what lessons brought, in which every command about a programme was performed. */
export async function everyCommandOnce(): Promise<World> {
  await acceptLessons(await openWorld())
  const world = await openWorld()
  await byWhoMay(world, 'sign-gate')
  for (const command of PROGRAMME_COMMANDS.filter((name) => !APART.includes(name)))
    await byWhoMay(world, command)
  await attachFile(world, `A certificate ${randomUUID()}`)
  await importFile(world)
  await passTheLead(world)
  return world
}

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
  subject = { kind: 'programme', code: world.code },
): Promise<string> {
  const content = await (await installedStore()).put(Readable.from([Buffer.from(text)]))
  const { id } = await database().trailSubject.findUniqueOrThrow({ where: { kind_code: subject } })
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

async function importFile(world: World): Promise<void> {
  const input = await VALID_INPUT['test-lot'](world, 'quality')
  await world.must('quality', 'test-lot', {
    ...input,
    file: await storeFile(world, 'quality', `coverage ${randomUUID()}`),
  })
}

/** The lead is handed on, and taken by quality once the new lead can no longer sign in. */
async function passTheLead(world: World): Promise<void> {
  await world.must('lead', 'hand-over-lead', { programme: world.code, personId: world.person.secondDesign })
  await world.must('administrator', 'disable-person', { personId: world.person.secondDesign, reason })
  await world.must('quality', 'take-lead', { programme: world.code, reason })
}
