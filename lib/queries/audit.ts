import { database } from '@/lib/db/client'
import type { Prisma } from '@/lib/db/generated/client'
import type { SignedIn } from '@/lib/auth/session'
import { entriesSaying } from '@/lib/queries/entries-saying'
import { pageFromAddress, textFromAddress } from '@/lib/queries/from-address'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import type { TrailEntry } from '@/shared/trail/entry'

export const AUDIT_ENTRIES_A_PAGE = 40
export const TRAILS_A_PAGE = 20

/** What is looked for over several trails; empty texts look for everything. */
export interface AuditSearch {
  readonly code: string
  readonly text: string
  readonly command: string
  readonly who: string
  readonly from: string
  readonly until: string
  readonly page: number
}

export interface TrailRow {
  readonly id: string
  readonly code: string
  readonly title: string
  readonly seq: number
  readonly hash: string
  /** What the newest nightly verification found; absent where there was none yet. */
  readonly verified: Verified | undefined
}

interface Verified {
  readonly at: Date
  readonly intact: boolean
  readonly clockSteps: number
}

type Reader = Pick<SignedIn, 'personId' | 'auditor'>

/** The programmes a person may read: an auditor all, others their own. */
const readableBy = ({ auditor, personId }: Reader, code: string): Prisma.ProgrammeWhereInput => ({
  ...(auditor ? {} : { memberships: { some: { personId } } }),
  ...(code ? { code: { contains: code, mode: 'insensitive' } } : {}),
})

/** One page of entries over all trails that a person may read, newest first: at most three statements. */
export async function readAudit(
  reader: Reader,
  search: AuditSearch,
): Promise<{ entries: readonly (TrailEntry & { code?: string })[]; hasMore: boolean }> {
  const narrowed = !reader.auditor || search.code !== ''
  const readable = narrowed
    ? await database().programme.findMany({ where: readableBy(reader, search.code), select: { id: true } })
    : []
  const rows = await database().trailEntry.findMany({
    where: {
      ...whereOf(search),
      ...(narrowed ? { trailId: { in: readable.map(({ id }) => id) } } : {}),
    },
    orderBy: [{ at: 'desc' }, { trailId: 'asc' }, { seq: 'desc' }],
    skip: (search.page - 1) * AUDIT_ENTRIES_A_PAGE,
    take: AUDIT_ENTRIES_A_PAGE + 1,
  })
  const ids = [...new Set(rows.map(({ trailId }) => trailId))].filter((id) => id !== INSTALLATION_TRAIL)
  const programmes = await database().programme.findMany({
    where: { id: { in: ids } },
    select: { id: true, code: true },
  })
  const codes = new Map(programmes.map(({ id, code }) => [id, code]))
  const entries = rows.slice(0, AUDIT_ENTRIES_A_PAGE).map((row) => {
    const code = codes.get(row.trailId)
    return code ? { ...row, code } : row
  })
  return { entries, hasMore: rows.length > AUDIT_ENTRIES_A_PAGE }
}

/** The first trails that match, with their heads and last verification, and how many there are: four statements. */
export async function readTrails(
  reader: Reader,
  code: string,
): Promise<{ trails: readonly TrailRow[]; found: number }> {
  const where = readableBy(reader, code)
  const [programmes, found] = await Promise.all([
    database().programme.findMany({
      where,
      orderBy: { code: 'asc' },
      take: TRAILS_A_PAGE,
      select: { id: true, code: true, title: true },
    }),
    database().programme.count({ where }),
  ])
  const ids = programmes.map(({ id }) => id)
  const [heads, verified] = await Promise.all([
    database().trail.findMany({
      where: { id: { in: ids } },
      select: { id: true, seq: true, headHash: true },
    }),
    database().verification.findMany({
      where: { trailId: { in: ids } },
      select: { trailId: true, at: true, intact: true, clockSteps: true },
    }),
  ])
  const trails = programmes.map((programme) => {
    const head = heads.find(({ id }) => id === programme.id)
    return {
      ...programme,
      seq: head?.seq ?? 0,
      hash: head?.headHash ?? '',
      verified: verified.find(({ trailId }) => trailId === programme.id),
    }
  })
  return { trails, found }
}

/** Every trail a person may read, by code; the installation's own for an auditor. */
export async function readableTrails(
  reader: Reader,
  code: string,
): Promise<readonly { id: string; code: string }[]> {
  const programmes = await database().programme.findMany({
    where: readableBy(reader, code),
    orderBy: { code: 'asc' },
    select: { id: true, code: true },
  })
  return reader.auditor && !code
    ? [{ id: INSTALLATION_TRAIL, code: INSTALLATION_TRAIL }, ...programmes]
    : programmes
}

const whereOf = ({ text, command, who, from, until }: AuditSearch): Prisma.TrailEntryWhereInput => ({
  ...(command ? { command } : {}),
  ...(who ? { actorName: { contains: who, mode: 'insensitive' } } : {}),
  ...(text ? entriesSaying(text) : {}),
  ...(from || until
    ? { at: { ...(from ? { gte: from } : {}), ...(until ? { lte: `${until}T23:59:59.999Z` } : {}) } }
    : {}),
})

/** A search from an address; what cannot be read is left out. */
export function auditSearchFrom(given: Record<string, string | string[] | undefined>): AuditSearch {
  const text = (name: string): string => textFromAddress(given[name])
  const date = (name: string): string => (/^\d{4}-\d{2}-\d{2}$/.test(text(name)) ? text(name) : '')
  return {
    code: text('programme'),
    text: text('text'),
    command: text('what'),
    who: text('who'),
    from: date('from'),
    until: date('until'),
    page: pageFromAddress(given['page']),
  }
}
