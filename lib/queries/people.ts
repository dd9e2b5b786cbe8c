import { oneTimePasswordIsOver } from '@/lib/auth/one-time-password'
import { database } from '@/lib/db/client'
import type { Prisma } from '@/lib/db/generated/client'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import type { TrailEntry } from '@/shared/trail/entry'

export const PEOPLE_A_PAGE = 40
const ENTRIES_SHOWN = 30

/** A person as the administrator sees them. */
export interface PersonRow {
  readonly id: string
  readonly email: string
  readonly name: string
  readonly rights: 'member' | 'auditor' | 'administrator'
  /** The department in which they belong to the works. */
  readonly worksDepartment: Department | null
  readonly disabledAt: Date | null
  readonly createdAt: Date
  readonly signsInBy:
    'password' | 'one-time password' | 'identity provider' | 'identity provider, not used yet'
  /** Until when a one-time password that was not changed yet is good, and whether that is over; else undefined. */
  readonly oneTimePassword: { readonly until: Date | null; readonly isOver: boolean } | undefined
  /** Such as "LX-41, Quality". */
  readonly memberships: readonly string[]
}

const SHOWN = {
  id: true,
  email: true,
  name: true,
  auditor: true,
  administrator: true,
  disabledAt: true,
  worksDepartment: true,
  createdAt: true,
  passwordHash: true,
  mustChangePassword: true,
  oneTimePasswordUntil: true,
  identity: true,
  memberships: {
    select: { department: true, programme: { select: { code: true } } },
    orderBy: { programme: { code: 'asc' } },
  },
} as const satisfies Prisma.PersonSelect

/** One page of the people of the installation by name: three statements whatever their number. */
export async function readPeople(
  text: string,
  page: number,
): Promise<{ people: readonly PersonRow[]; found: number }> {
  const contains = { contains: text, mode: 'insensitive' } as const
  const where = text ? { OR: [{ name: contains }, { email: contains }] } : {}
  const [rows, found] = await Promise.all([
    database().person.findMany({
      where,
      orderBy: [{ name: 'asc' }, { email: 'asc' }],
      skip: (page - 1) * PEOPLE_A_PAGE,
      take: PEOPLE_A_PAGE,
      select: SHOWN,
    }),
    database().person.count({ where }),
  ])
  return { people: rows.map(personRow), found }
}

/** One person, with what the installation's trail says of them, newest first; undefined when there is none. */
export async function readPerson(
  id: string,
): Promise<{ person: PersonRow; entries: readonly TrailEntry[] } | undefined> {
  const [row, entries] = await Promise.all([
    database().person.findUnique({ where: { id }, select: SHOWN }),
    database().trailEntry.findMany({
      where: { trailId: INSTALLATION_TRAIL, payload: { contains: `"personId":"${id}"` } },
      orderBy: { seq: 'desc' },
      take: ENTRIES_SHOWN,
    }),
  ])
  return row ? { person: personRow(row), entries } : undefined
}

type Shown = Prisma.PersonGetPayload<{ select: typeof SHOWN }>

/** The hash of the password stays here. */
function personRow({
  auditor,
  administrator,
  passwordHash,
  mustChangePassword,
  oneTimePasswordUntil: until,
  identity,
  memberships,
  worksDepartment,
  ...row
}: Shown): PersonRow {
  return {
    ...row,
    worksDepartment: worksDepartment as Department | null,
    rights: administrator ? 'administrator' : auditor ? 'auditor' : 'member',
    signsInBy: passwordHash
      ? mustChangePassword
        ? 'one-time password'
        : 'password'
      : identity
        ? 'identity provider'
        : 'identity provider, not used yet',
    oneTimePassword:
      passwordHash && mustChangePassword
        ? {
            until,
            isOver: oneTimePasswordIsOver({ mustChangePassword, oneTimePasswordUntil: until }, new Date()),
          }
        : undefined,
    memberships: memberships.map(
      ({ department, programme }) => `${programme.code}, ${DEPARTMENT_NAMES[department as Department]}`,
    ),
  }
}

const ONE_TIME_SHOWN = 20

/** Whose one-time password was not changed yet, the earliest to end first. */
export async function readOneTimePasswords(): Promise<{ people: readonly PersonRow[]; found: number }> {
  const where = { mustChangePassword: true, passwordHash: { not: null }, disabledAt: null }
  const [rows, found] = await Promise.all([
    database().person.findMany({
      where,
      orderBy: [{ oneTimePasswordUntil: 'asc' }, { name: 'asc' }],
      take: ONE_TIME_SHOWN,
      select: SHOWN,
    }),
    database().person.count({ where }),
  ])
  return { people: rows.map(personRow), found }
}

/** Whether somebody's sign-in is open: they exist and were not disabled. */
export const canSignIn = async (personId: string): Promise<boolean> =>
  (await database().person.count({ where: { id: personId, disabledAt: null } })) > 0
