import { execFileSync } from 'node:child_process'
import {
  chmodSync,
  closeSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  statSync,
  truncateSync,
  writeSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { withConnection } from '@/lib/db/connect'
import { startEmbeddedServer } from '@/lib/db/embedded-server'

/** A disk of its own, small enough to fill: only root may have one. */
function mayMount(): boolean {
  if (process.getuid?.() !== 0 || process.platform !== 'linux') return false
  const folder = mkdtempSync(join(tmpdir(), 'liquidus-mount-'))
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', folder], { stdio: 'ignore' })
    execFileSync('umount', [folder])
    return true
  } catch {
    return false
  } finally {
    rmSync(folder, { recursive: true })
  }
}

const MEBIBYTE = Buffer.alloc(1024 * 1024)

let disk: string
let filler: string

function mount(size: string): void {
  execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${size},mode=0755`, 'tmpfs', disk])
}

/** Writes until there is no room. */
function fill(): void {
  const file = openSync(filler, 'a')
  try {
    for (;;) writeSync(file, MEBIBYTE)
  } catch (error) {
    expect((error as NodeJS.ErrnoException).code).toBe('ENOSPC')
  } finally {
    closeSync(file)
  }
}

async function writtenRows(url: string): Promise<number | undefined> {
  const { rows } = await withConnection(url, (client) =>
    client.query<{ rows: number }>('SELECT count(DISTINCT number)::int AS rows FROM kept'),
  )
  return rows[0]?.rows
}

describe.runIf(mayMount())('a full disk', () => {
  beforeEach(() => {
    disk = mkdtempSync(join(tmpdir(), 'liquidus-disk-'))
    chmodSync(disk, 0o755)
    filler = join(disk, 'filler')
  })

  afterEach(() => {
    execFileSync('umount', ['--lazy', disk])
    rmSync(disk, { recursive: true, force: true })
  })

  test('at the first start is named in a sentence, and with room again the start succeeds', async () => {
    mount('200m')
    const dataFolder = join(disk, 'data')
    mkdirSync(dataFolder, { mode: 0o711 })
    fill()
    await expect(startEmbeddedServer(dataFolder)).rejects.toThrow(
      'The disk that holds the data folder is full. Free some space and start again.',
    )
    rmSync(filler)
    const server = await startEmbeddedServer(dataFolder)
    await server.stop()
    expect(existsSync(join(dataFolder, 'lock'))).toBe(false)
  })

  test('in the middle of writing loses nothing that was acknowledged, and with room again goes on', async () => {
    mount('200m')
    const dataFolder = join(disk, 'data')
    const server = await startEmbeddedServer(dataFolder)
    await withConnection(server.url, (client) => client.query('CREATE TABLE kept (number int, text text)'))
    fill()
    truncateSync(filler, statSync(filler).size - 16 * MEBIBYTE.length)
    let acknowledged = 0
    const writing = withConnection(server.url, async (client) => {
      for (;;) {
        await client.query(
          `INSERT INTO kept SELECT $1, string_agg(md5(n::text), '') FROM generate_series(1, 4000) n`,
          [acknowledged],
        )
        acknowledged++
      }
    })
    try {
      await expect(writing).rejects.toThrow()
      expect(acknowledged).toBeGreaterThan(0)
      rmSync(filler)
      await expect
        .poll(() => writtenRows(server.url).catch(() => 'no answer'), { timeout: 60_000 })
        .toBeTypeOf('number')
    } finally {
      await server.stop()
    }
    const next = await startEmbeddedServer(dataFolder)
    try {
      expect(await writtenRows(next.url)).toBeGreaterThanOrEqual(acknowledged)
    } finally {
      await next.stop()
    }
  })
})
