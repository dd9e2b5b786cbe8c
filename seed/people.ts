import { randomUUID } from 'node:crypto'
import { createFirstAdministrator } from '@/lib/auth/first-administrator'
import { hashPassword } from '@/lib/auth/password'
import { perform } from '@/lib/commands/perform'

/** One password for everybody in the demo, printed at the start and never used elsewhere. */
export const DEMO_PASSWORD = 'four-gates-to-service'

/** The invented people of the invented firm "Harrow Instruments". */
export const DEMO_PEOPLE = {
  ines: {
    email: 'ines@demo.invalid',
    name: 'Ines Okafor',
    does: 'design engineer, leads LX-41',
    rights: 'member',
    worksDepartment: 'design',
  },
  tomas: {
    email: 'tomas@demo.invalid',
    name: 'Tomas Lindqvist',
    does: 'design engineer',
    rights: 'member',
    worksDepartment: 'design',
  },
  petra: {
    email: 'petra@demo.invalid',
    name: 'Petra Vance',
    does: 'production supervisor',
    rights: 'member',
    worksDepartment: 'production',
  },
  goran: {
    email: 'goran@demo.invalid',
    name: 'Goran Eide',
    does: 'production, wave line',
    rights: 'member',
    worksDepartment: 'production',
  },
  quill: {
    email: 'quill@demo.invalid',
    name: 'Quill Amaro',
    does: 'quality engineer',
    rights: 'member',
    worksDepartment: 'quality',
  },
  sunniva: {
    email: 'sunniva@demo.invalid',
    name: 'Sunniva Brandt',
    does: 'quality, incoming parts',
    rights: 'member',
    worksDepartment: 'quality',
  },
  audun: {
    email: 'audun@demo.invalid',
    name: 'Audun Pell',
    does: 'auditor',
    rights: 'auditor',
    worksDepartment: null,
  },
  adela: {
    email: 'adela@demo.invalid',
    name: 'Adela Storm',
    does: 'administrator',
    rights: 'administrator',
    worksDepartment: null,
  },
} as const
export type DemoPerson = keyof typeof DEMO_PEOPLE
export type PersonIds = Readonly<Record<DemoPerson, string>>

/** Adds everybody, through the door, each with the demo password as their own. */
export async function addDemoPeople(at: Date): Promise<PersonIds> {
  const { adela, ...others } = DEMO_PEOPLE
  const administrator = await createFirstAdministrator(adela, at)
  if (!administrator) throw new Error('The demo goes into an empty database; this one has people in it.')
  const passwordHash = await hashPassword(DEMO_PASSWORD)
  const ids: Record<string, string> = { adela: administrator.id }
  for (const [key, { email, name, rights, worksDepartment }] of Object.entries(others)) {
    const outcome = await perform(
      administrator.id,
      'add-person',
      { email, name, rights, worksDepartment, passwordHash },
      { key: randomUUID(), at },
    )
    if (!outcome.ok) throw new Error(`The demo could not add ${name}: ${outcome.message}`)
    ids[key] = outcome.result.person
  }
  for (const id of Object.values(ids))
    await perform(id, 'change-own-password', { passwordHash }, { key: randomUUID(), at })
  return ids as PersonIds
}
