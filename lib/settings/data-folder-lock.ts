import { linkSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beginningOf, isAlive } from '@/lib/settings/process-identity'
import { readIfThere } from '@/lib/settings/read-if-there'
import { StartRefused } from '@/lib/settings/start-refused'

const MAX_TRIES = 20

/**
 * Takes the data folder for this process, so that two starts cannot share one private database.
 * A lock whose process is gone is taken over. Returns what gives it back.
 * Throws StartRefused when another live process holds it.
 */
export function lockDataFolder(dataFolder: string): () => void {
  const path = join(dataFolder, 'lock')
  const mine = `${process.pid}\n${beginningOf(process.pid) ?? ''}\n`
  const aside = `${path}.${process.pid}`
  writeFileSync(aside, mine, { mode: 0o644 })
  try {
    for (let tries = 0; tries < MAX_TRIES; tries++) {
      if (linkIfFree(aside, path)) return () => release(path, mine)
      const found = readIfThere(path)
      if (found === undefined) continue
      refuseIfHeld(found, dataFolder)
      setAside(path, found)
    }
  } finally {
    rmSync(aside, { force: true })
  }
  throw new StartRefused(
    `The data folder ${dataFolder} is being taken by several starts at once. Start one only.`,
  )
}

/** Throws StartRefused when a live process holds the data folder; takes nothing. */
export function refuseHeldFolder(dataFolder: string): void {
  const found = readIfThere(join(dataFolder, 'lock'))
  if (found !== undefined) refuseIfHeld(found, dataFolder)
}

function refuseIfHeld(found: string, dataFolder: string): void {
  const [number, beginning] = found.split('\n')
  const pid = Number(number)
  if (!(pid > 0) || pid === process.pid || !isAlive(pid)) return
  const beginsAsWritten = !beginning || beginningOf(pid) === beginning
  if (!beginsAsWritten) return
  throw new StartRefused(
    `Liquidus already runs on the data folder ${dataFolder} (process ${pid}). ` +
      'Stop that one first, or name another folder in LIQUIDUS_DATA and another port in PORT.',
  )
}

/** Takes a dead process's lock away; puts it back when, in between, a live one had taken its place. */
function setAside(path: string, dead: string): void {
  const grave = `${path}.dead.${process.pid}`
  try {
    renameSync(path, grave)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return
    throw error
  }
  if (readIfThere(grave) !== dead) linkIfFree(grave, path)
  rmSync(grave, { force: true })
}

function linkIfFree(from: string, to: string): boolean {
  try {
    linkSync(from, to)
    return true
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false
    throw error
  }
}

function release(path: string, mine: string): void {
  if (readIfThere(path) === mine) rmSync(path, { force: true })
}
