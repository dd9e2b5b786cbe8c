import { createReadStream, createWriteStream, existsSync } from 'node:fs'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { createGunzip, createGzip, gunzipSync, gzipSync } from 'node:zlib'
import { extract, pack } from 'tar-stream'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { restoreBackup } from '@/lib/backup/restore-backup'
import { quoted, tablesInOrder } from '@/lib/backup/tables-in-order'
import { writeBackup } from '@/lib/backup/write-backup'
import { storedHashes } from '@/lib/evidence/stored-hashes'
import { withConnection } from '@/lib/db/connect'
import { allTrails } from '@/lib/trail/all-trails'
import { readerOver } from '@/lib/db/row-reader'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import {
  everyCommandOnce,
  somePartOfTheWorks,
  somethingInStore,
  somethingOfTheWorks,
  whatIsKeptOnce,
} from '@/tests/commands/every-command-once'
import type { World } from '@/tests/commands/world'
import { emptyDatabase } from '@/tests/setup/database'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'
import { MIGRATIONS } from '@/tests/setup/test-server'

/* One archive of everything, made while people work, and put back into an empty place. */

let from: FreshInstallation
let world: World
let folder: string
let archive: string
beforeAll(async () => {
  from = await freshInstallation()
  world = await everyCommandOnce()
  await whatIsKeptOnce(world)
  await somethingOfTheWorks(world)
  await somethingInStore(world)
  await somePartOfTheWorks(world)
  folder = await mkdtemp(join(tmpdir(), 'liquidus-backup-test-'))
  archive = join(folder, 'whole.tar.gz')
  await writeBackup(source(), archive)
})
afterAll(async () => {
  await from.drop()
  await rm(folder, { recursive: true, force: true })
})

const source = () => ({ url: from.url, evidence: join(from.folder, 'evidence') })

/** All rows of all tables, each table's in an order of its own. */
const everything = (url: string): Promise<Record<string, string[]>> =>
  withConnection(url, async (client) => {
    const rows: Record<string, string[]> = {}
    for (const { name } of await tablesInOrder(client)) {
      const found = await client.query<{ row: string }>(`SELECT t::text AS "row" FROM ${quoted(name)} t`)
      rows[name] = found.rows.map(({ row }) => row).sort()
    }
    return rows
  })

const keptFiles = async (folder: string): Promise<string[]> => {
  const hashes: string[] = []
  for await (const hash of storedHashes(folder)) hashes.push(hash)
  return hashes.sort()
}

let places = 0
async function inEmptyPlace<Result>(
  work: (place: Parameters<typeof restoreBackup>[1]) => Promise<Result>,
): Promise<Result> {
  const made = await freshInstallation(emptyDatabase)
  try {
    return await work({
      url: made.url,
      evidence: join(folder, `restored-${places++}`),
      migrations: MIGRATIONS,
    })
  } finally {
    await made.drop()
    process.env.DATABASE_URL = from.url
    process.env.LIQUIDUS_DATA = from.folder
  }
}

test('it brings back every row and every file, and the trails are whole', async () => {
  const before = await everything(from.url)
  const empty = Object.keys(before).filter((table) => before[table]!.length === 0)
  await inEmptyPlace(async (place) => {
    const { isOfThisVersion, files } = await restoreBackup(archive, place)
    expect(isOfThisVersion).toBe(true)
    expect(await everything(place.url)).toEqual(before)
    const hashes = await keptFiles(source().evidence)
    expect(hashes.length).toBeGreaterThan(2)
    expect(await keptFiles(place.evidence)).toEqual(hashes)
    expect(files).toBe(hashes.length)
    const trails = await withConnection(place.url, (client) => allTrails(readerOver(client)))
    expect(trails.length).toBeGreaterThan(5)
  })
  // Nearly every table holds something, or else nothing would be shown of it.
  expect(empty.length).toBeLessThan(Object.keys(before).length / 4)
})

test('made while people work, it is of one moment', async () => {
  const path = join(folder, 'busy.tar.gz')
  let done = false
  const working = (async () => {
    for (let seen = 0; !done; seen++)
      await world.must('design', 'add-comment', {
        programme: world.code,
        about: { kind: 'item', key: 'laminate' },
        text: `Said while it is written down, ${seen}.`,
        mentions: [],
      })
  })()
  await writeBackup(source(), path).finally(() => (done = true))
  await working
  await inEmptyPlace(async (place) => {
    await restoreBackup(path, place)
    const trails = await withConnection(place.url, (client) => allTrails(readerOver(client)))
    process.env.DATABASE_URL = place.url
    const own = trails.find(({ code }) => code === world.code)!
    const verdict = await verdictOnStored(own.id, new Map())
    expect(verdict.chain.intact, JSON.stringify(verdict.chain)).toBe(true)
  })
})

test('no file is written over', async () => {
  const path = join(folder, 'mine.txt')
  await writeFile(path, 'mine')
  await expect(writeBackup(source(), path)).rejects.toThrow(/There is a file .*mine.txt already/)
  expect(await readFile(path, 'utf8')).toBe('mine')
  await expect(writeBackup(source(), join(folder, 'nowhere', 'x.tar.gz'))).rejects.toThrow(
    /cannot be written/,
  )
})

describe('what is not whole is refused, and the place is empty again', () => {
  /** The archive with its parts changed: another content, or undefined to leave one out. */
  async function changed(
    name: string,
    change: (part: string, content: Buffer) => Buffer | undefined,
    more?: { name: string; content: string },
  ) {
    const path = join(folder, name)
    const parts: [string, Buffer][] = []
    const reading = extract()
    const read = pipeline(createReadStream(archive), createGunzip(), reading)
    for await (const part of reading) {
      const chunks: Buffer[] = []
      for await (const chunk of Readable.from(part as AsyncIterable<Buffer>)) chunks.push(chunk as Buffer)
      parts.push([part.header.name, Buffer.concat(chunks)])
    }
    await read
    const writing = pack()
    const written = pipeline(writing, createGzip(), createWriteStream(path))
    for (const [part, content] of parts) {
      const now = change(part, content)
      if (now) writing.entry({ name: part }, now)
      // Right after the beginning, where it would be read first.
      if (more && part === 'begin.json') writing.entry({ name: more.name }, more.content)
    }
    writing.finalize()
    await written
    return path
  }
  const without = (left: RegExp) => (part: string, content: Buffer) => (left.test(part) ? undefined : content)
  const instead = (of: RegExp, other: (content: string) => string) => (part: string, content: Buffer) =>
    of.test(part) ? Buffer.from(other(content.toString('utf8'))) : content

  async function refused(path: string, because: RegExp): Promise<void> {
    await inEmptyPlace(async (place) => {
      await expect(restoreBackup(path, place)).rejects.toThrow(because)
      expect(existsSync(place.evidence)).toBe(false)
      // The same place takes the whole archive afterwards.
      await restoreBackup(archive, place)
    })
  }

  test('without its end', async () =>
    refused(await changed('endless.tar.gz', without(/^end/)), /breaks off before its end/))
  test('cut in the middle', async () => {
    const path = join(folder, 'cut.tar.gz')
    const bytes = await readFile(archive)
    await writeFile(path, bytes.subarray(0, bytes.length / 2))
    await refused(path, /could not be restored/)
  })
  test('one row less', async () => {
    const lines = (content: string) => content.split('\n').slice(1).join('\n')
    await refused(
      await changed('less.tar.gz', instead(/^tables\/TrailEntry$/, lines)),
      /of TrailEntry it says \d+ rows and has \d+/,
    )
  })
  test('one file less, and one with other bytes', async () => {
    let left = false
    const first = (part: string, content: Buffer) =>
      part.startsWith('evidence/') && !left ? ((left = true), undefined) : content
    await refused(await changed('fewer.tar.gz', first), /it says \d+ files and has \d+/)
    await refused(
      await changed(
        'other.tar.gz',
        instead(/^evidence\//, (content) => `${content}x`),
      ),
      /gives another hash/,
    )
  })
  test('another head of a trail', async () =>
    refused(
      await changed(
        'heads.tar.gz',
        instead(/^end/, (end) => end.replace(/[0-9a-f]{64}/, '0'.repeat(64))),
      ),
      /ends in another hash/,
    ))
  test('of a version that is not known here', async () =>
    refused(
      await changed(
        'newer.tar.gz',
        instead(/^begin/, (begin) => begin.replace(/"name":"2026/, '"name":"9026')),
      ),
      /does not know/,
    ))
  test('no archive at all, and none there', async () => {
    const path = join(folder, 'text.tar.gz')
    await writeFile(path, gzipSync('no tar'))
    expect(gunzipSync(await readFile(path)).toString()).toBe('no tar')
    await refused(path, /could not be restored/)
    await refused(join(folder, 'missing.tar.gz'), /could not be restored/)
  })
  test('a part with a name that leads elsewhere', async () =>
    refused(
      await changed('elsewhere.tar.gz', (_part, content) => content, {
        name: 'evidence/../../escaped',
        content: 'x',
      }),
      /is not a SHA-256 hash/,
    ))
})

test('nothing is put beside what is there', async () => {
  await expect(
    restoreBackup(archive, { url: from.url, evidence: join(folder, 'new'), migrations: MIGRATIONS }),
  ).rejects.toThrow('The database is not empty.')
  await inEmptyPlace(async (place) => {
    await expect(restoreBackup(archive, { ...place, evidence: source().evidence })).rejects.toThrow(
      'is not empty. Restore into a new data folder.',
    )
    expect((await keptFiles(source().evidence)).length).toBeGreaterThan(2)
  })
})
