import { randomUUID } from 'node:crypto'
import type { Outcome } from '@/lib/commands/outcome'
import type { InputOf, ResultOf } from '@/lib/commands/all-commands'
import { perform, performUnparsed } from '@/lib/commands/perform'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { loadChangeNotices } from '@/lib/programme/change-notices'
import { noticeStanding } from '@/shared/gate/change-notice'
import { noticeEffect } from '@/shared/gate/notice-effect'
import { itemStateFor } from '@/shared/gate/judgement'
import type { Department } from '@/shared/plan/department'
import type { CommandName } from '@/shared/commands/all-faces'
import { quickHash } from '@/tests/commands/quick-hash'

export const PASSWORD = 'correct horse battery staple'

/** One person for each part somebody can have in a programme. */
export const ROLES = [
  'lead',
  'design',
  'production',
  'quality',
  'auditor',
  'administrator',
  'stranger',
] as const
export type Role = (typeof ROLES)[number]

export interface World {
  readonly code: string
  readonly person: Readonly<Record<Role | 'secondDesign' | 'secondProduction' | 'secondQuality', string>>
  /** Performs as somebody, with the password where a signature is asked for. */
  readonly as: <N extends CommandName>(
    who: keyof World['person'],
    command: N,
    input: InputOf<N>,
  ) => Promise<Outcome<ResultOf<N>>>
  /** The same with what no caller of ours would give. */
  readonly asUnparsed: (who: keyof World['person'], command: CommandName, input: object) => Promise<Outcome>
  /** The same, where the story needs it to succeed. */
  readonly must: <N extends CommandName>(
    who: keyof World['person'],
    command: N,
    input: InputOf<N>,
  ) => Promise<Extract<Outcome<ResultOf<N>>, { ok: true }>>
}

const DEPARTMENT_OF: Readonly<Record<string, Department>> = {
  design: 'design',
  production: 'production',
  quality: 'quality',
  secondDesign: 'design',
  secondProduction: 'production',
  secondQuality: 'quality',
}

/** A programme led by `lead` (of design), with two people in each department and the outsiders. */
export async function openWorld(): Promise<World> {
  const passwordHash = quickHash(PASSWORD)
  const names = [...ROLES, 'secondDesign', 'secondProduction', 'secondQuality'] as const
  const person = Object.fromEntries(names.map((name) => [name, randomUUID()])) as World['person']
  const code = `T-${randomUUID().slice(0, 8).toUpperCase()}`
  await database().person.createMany({
    data: names.map((name) => ({
      id: person[name],
      email: addressOf(name, code),
      name: `Test ${name}`,
      passwordHash,
      auditor: name === 'auditor',
      administrator: name === 'administrator',
      worksDepartment: name === 'lead' ? 'design' : (DEPARTMENT_OF[name] ?? null),
      createdAt: new Date(),
    })),
  })
  const circumstances = () => ({ key: randomUUID(), proof: { password: PASSWORD } })
  const as: World['as'] = (who, command, input) => perform(person[who], command, input, circumstances())
  const asUnparsed: World['asUnparsed'] = (who, command, input) =>
    performUnparsed(person[who], command, input, circumstances())
  const must: World['must'] = async (who, command, input) => {
    const outcome = await as(who, command, input)
    if (!outcome.ok) throw new Error(`${command} by ${who} was refused: ${outcome.message}`)
    return outcome
  }
  await must('lead', 'open-programme', programmeInput(code))
  for (const [name, department] of Object.entries(DEPARTMENT_OF)) {
    await must('lead', 'invite-member', { programme: code, email: addressOf(name, code), department })
  }
  return { code, person, as, asUnparsed, must }
}

const addressOf = (name: string, code: string): string => `${name}-${code}@test.invalid`.toLowerCase()

export const programmeInput = (code: string): InputOf<'open-programme'> => ({
  code,
  title: 'A board for tests',
  department: 'design',
  productClass: '2',
  alloyFamily: 'tin-lead',
  serviceYears: 10,
  environment: 'GF',
  annualVolume: 100,
})

/** The digest of an item as it stands. */
export async function itemDigest(code: string, key: string): Promise<string> {
  const judged = await judgedProgramme(code)
  const digest = judged && itemStateFor(judged.judgement, key)?.digest
  if (!digest) throw new Error(`Programme ${code} has no item ${key}.`)
  return digest
}

/** The digest of a stage as it stands. */
export async function stageDigest(code: string, stage: string): Promise<string> {
  const judged = await judgedProgramme(code)
  const gate = judged?.judgement.gates.find((entry) => entry.stage === stage)
  if (!gate) throw new Error(`Programme ${code} has no gate ${stage}.`)
  return gate.digest
}

/** What departments answer to of a change notice as it stands. */
export async function noticeDigest(code: string, number: number): Promise<string> {
  const judged = await judgedProgramme(code)
  if (!judged) throw new Error(`There is no programme ${code}.`)
  const { state, judgement } = judged
  const [notice] = await loadChangeNotices(database(), state.programme.id, number)
  if (!notice) throw new Error(`Programme ${code} has no change notice ${number}.`)
  return noticeStanding(notice, state, noticeEffect(state, judgement, notice.changes)).digest
}

/** How many entries the programme's trail has. */
export async function trailLength(code: string): Promise<number> {
  const programme = await database().programme.findUniqueOrThrow({ where: { code }, select: { id: true } })
  return (await database().trail.findUniqueOrThrow({ where: { id: programme.id } })).seq
}
