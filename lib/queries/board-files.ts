import { LRUCache } from 'lru-cache'
import type { BoardReading } from '@/lib/board-files/board-reading'
import type { BoardSaid, RolesSaid } from '@/lib/board-files/read-archive'
import { readInWorker } from '@/lib/board-files/read-in-worker'
import { database } from '@/lib/db/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { isUuid } from '@/lib/queries/from-address'
import type { Board } from '@/shared/board/board'
import { netsToWatch } from '@/shared/board/judged/spacing-asked'
import { roleFrom } from '@/shared/board/role-code'
import { Refused } from '@/shared/refused'
import type { Facts } from '@/shared/rules/facts'

/** An archive attached as evidence, and what somebody said last that its files are. */
export interface BoardArchive {
  readonly evidence: string
  readonly itemKey: string
  readonly fileName: string
  readonly sha256: string
  readonly confirmed: { readonly byName: string; readonly at: Date; readonly roles: RolesSaid } | undefined
}

/** The archive behind a piece of evidence; undefined where it is none, or was withdrawn. */
export async function findBoardArchive(
  programmeId: string,
  evidenceId: string,
): Promise<BoardArchive | undefined> {
  if (!isUuid(evidenceId)) return undefined
  const db = database()
  const evidence = await db.evidence.findFirst({
    where: { id: evidenceId, trailId: programmeId, withdrawnAt: null },
  })
  if (!evidence?.sha256) return undefined
  const [stored, confirmation] = await Promise.all([
    db.storedFile.findUnique({ where: { sha256: evidence.sha256 } }),
    db.boardConfirmation.findFirst({
      where: { programmeId, evidenceId },
      orderBy: [{ at: 'desc' }, { id: 'desc' }],
    }),
  ])
  if (stored?.mediaType !== 'application/zip') return undefined
  const by = confirmation && (await db.person.findUnique({ where: { id: confirmation.byId } }))
  return {
    evidence: evidence.id,
    itemKey: evidence.itemKey ?? '',
    fileName: evidence.fileName ?? '',
    sha256: evidence.sha256,
    confirmed: confirmation
      ? {
          byName: by?.name ?? '',
          at: confirmation.at,
          roles: rolesFrom(confirmation.files as unknown as readonly { name: string; role: string }[]),
        }
      : undefined,
  }
}

/** Another archive of board files of a programme, to be compared with. */
export interface OtherArchive {
  readonly evidence: string
  readonly fileName: string
  readonly at: Date
}

/** The other archives that are attached to a programme, the newest first. */
export async function otherArchives(
  programmeId: string,
  { evidence, sha256 }: BoardArchive,
): Promise<OtherArchive[]> {
  const db = database()
  const attached = await db.evidence.findMany({
    where: { trailId: programmeId, withdrawnAt: null, id: { not: evidence }, sha256: { not: null } },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    select: { id: true, fileName: true, sha256: true, at: true },
  })
  const archives = await db.storedFile.findMany({
    where: {
      sha256: { in: attached.flatMap((each) => each.sha256 ?? []), not: sha256 },
      mediaType: 'application/zip',
    },
    select: { sha256: true },
  })
  const zipped = new Set(archives.map((each) => each.sha256))
  return attached
    .filter((each) => each.sha256 !== null && zipped.has(each.sha256))
    .map(({ id, fileName, at }) => ({ evidence: id, fileName: fileName ?? '', at }))
}

const rolesFrom = (files: readonly { name: string; role: string }[]): RolesSaid =>
  Object.fromEntries(
    files.flatMap(({ name, role }) => {
      const known = roleFrom(role)
      return known ? [[name, known]] : []
    }),
  )

/** Readings follow from the bytes and from what was said of them: what was read once stays right. */
const readings = new LRUCache<string, Promise<BoardReading>>({ max: 12 })

/**
 * The archive as it was read, or why it was not, as a sentence for the person.
 * What is specified tells between which nets gaps are looked for farther.
 */
export async function readBoard(
  { sha256, confirmed }: BoardArchive,
  facts: Facts,
): Promise<{ reading: BoardReading } | { refused: string }> {
  const said: BoardSaid = { roles: confirmed?.roles ?? {}, watched: netsToWatch(facts) }
  const key = `${sha256} ${JSON.stringify(said)}`
  let reading = readings.get(key)
  if (!reading) {
    reading = installedStore()
      .then((store) => store.read(sha256))
      .then((archive) => readInWorker(archive, said))
    readings.set(key, reading)
    reading.catch(() => readings.delete(key))
  }
  try {
    return { reading: await reading }
  } catch (error) {
    if (error instanceof Refused) return { refused: error.message }
    throw error
  }
}

/** The board whose files somebody of the programme confirmed last, as it was read; undefined where there is none. */
export async function confirmedBoard(
  programmeId: string,
  facts: Facts,
): Promise<{ archive: BoardArchive; board: Board } | undefined> {
  const confirmations = await database().boardConfirmation.findMany({
    where: { programmeId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    distinct: ['evidenceId'],
    select: { evidenceId: true },
  })
  for (const { evidenceId } of confirmations) {
    const archive = await findBoardArchive(programmeId, evidenceId)
    const read = archive && (await readBoard(archive, facts))
    if (archive && read && 'reading' in read) return { archive, board: read.reading.board }
  }
  return undefined
}
