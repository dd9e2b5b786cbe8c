import { statfs } from 'node:fs/promises'
import { database } from '@/lib/db/client'
import { settings } from '@/lib/settings/settings'

/** Load balancers ask every few seconds and wait about as long. */
const LONGEST_WAIT_MS = 4_000
const BYTES_IN_MB = 1_000_000

/** Throws when the database cannot be reached, or does not answer within 4 s: a server that hangs refuses nobody. */
export const databaseAnswers = (): Promise<void> =>
  inTime('The database', async () => {
    await database().$queryRaw`SELECT 1`
  })

/** A sentence when the disk of the data folder has less room than the settings ask for; undefined while it has enough. */
export async function littleRoom(): Promise<string | undefined> {
  const { dataFolder, minFreeMb } = settings()
  const { bavail, bsize } = await inTime('The disk of the data folder', () => statfs(dataFolder))
  const freeMb = Math.floor((bavail * bsize) / BYTES_IN_MB)
  return freeMb < minFreeMb
    ? `The disk of the data folder has ${freeMb} MB left; LIQUIDUS_MIN_FREE_MB asks for ${minFreeMb}. Make room.`
    : undefined
}

async function inTime<Result>(what: string, work: () => Promise<Result>): Promise<Result> {
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(
      () => reject(new Error(`${what} did not answer within ${LONGEST_WAIT_MS / 1000} s.`)),
      LONGEST_WAIT_MS,
    )
  })
  try {
    return await Promise.race([work(), late])
  } finally {
    clearTimeout(timer)
  }
}
