import { spawn } from 'node:child_process'
import { once } from 'node:events'
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { withConnection } from '@/lib/db/connect'
import { serverAccount } from '@/lib/db/embedded-account'
import { embeddedBinaries } from '@/lib/db/embedded-binaries'
import { prepareCluster } from '@/lib/db/embedded-cluster'
import { startOnFreePort, stopServer } from '@/lib/db/embedded-process'
import { startEmbeddedServer, type EmbeddedServer } from '@/lib/db/embedded-server'
import { isAlive } from '@/lib/settings/process-identity'
import { runScript, type Program } from '@/tests/faults/programs'

const HOLDER = 'tests/faults/hold-server.ts'
const isRoot = process.getuid?.() === 0

let above: string
let dataFolder: string
let started: { servers: EmbeddedServer[]; programs: Program[] }

beforeEach(() => {
  above = mkdtempSync(join(tmpdir(), 'liquidus-faults-'))
  chmodSync(above, 0o755)
  dataFolder = join(above, 'data')
  started = { servers: [], programs: [] }
})

afterEach(async () => {
  for (const program of started.programs) await kill(program)
  for (const server of started.servers) await server.stop()
  if (existsSync(join(dataFolder, 'postgres', 'postmaster.pid'))) {
    await (await startEmbeddedServer(dataFolder)).stop()
  }
  rmSync(above, { recursive: true, force: true })
})

async function start(folder = dataFolder): Promise<EmbeddedServer> {
  const server = await startEmbeddedServer(folder)
  started.servers.push(server)
  return server
}

async function startInProgram(): Promise<{ program: Program; url: string }> {
  const program = runScript(HOLDER, [dataFolder])
  started.programs.push(program)
  return { program, url: await program.line(/^postgresql:/) }
}

async function kill(program: Program): Promise<void> {
  program.process.kill('SIGKILL')
  await program.ended
}

async function query(url: string, sql: string): Promise<Record<string, unknown>[]> {
  return withConnection(url, async (client) => (await client.query<Record<string, unknown>>(sql)).rows)
}

const postmaster = () =>
  Number(readFileSync(join(dataFolder, 'postgres', 'postmaster.pid'), 'utf8').split('\n')[0])

describe('an ordinary start', () => {
  test('keeps its text as UTF-8 in the order of code points, and every transaction on disk', async () => {
    const { url } = await start()
    const [row] = await query(
      url,
      `SELECT current_setting('server_encoding') AS encoding, current_setting('fsync') AS fsync,
              current_setting('synchronous_commit') AS commit, current_setting('TimeZone') AS zone,
              'Z' < 'a' AS by_code_point, upper('é') AS upper`,
    )
    expect(row).toEqual({
      encoding: 'UTF8',
      fsync: 'on',
      commit: 'on',
      zone: 'UTC',
      by_code_point: true,
      upper: 'É',
    })
  })

  test('lets in nobody without the password, and the superuser not at all', async () => {
    const { url } = await start()
    const withoutPassword = new URL(url)
    withoutPassword.password = 'wrong'
    await expect(query(withoutPassword.href, 'SELECT 1')).rejects.toThrow('password authentication failed')
    const superuser = new URL(url)
    superuser.username = 'postgres'
    await expect(query(superuser.href, 'SELECT 1')).rejects.toThrow('no pg_hba.conf entry')
    const [role] = await query(url, 'SELECT rolsuper FROM pg_roles WHERE rolname = current_user')
    expect(role).toEqual({ rolsuper: false })
  })

  test('keeps the password readable by its owner only', async () => {
    await start()
    expect(statSync(join(dataFolder, 'postgres-password')).mode & 0o777).toBe(0o600)
    expect(statSync(join(dataFolder, 'postgres')).mode & 0o777).toBe(0o700)
  })

  test('stops leaving no process, no lock and its data', async () => {
    const first = await startEmbeddedServer(dataFolder)
    await query(first.url, 'CREATE TABLE kept AS SELECT 7 AS number')
    const pid = postmaster()
    await first.stop()
    expect(isAlive(pid)).toBe(false)
    expect(existsSync(join(dataFolder, 'lock'))).toBe(false)
    const { url } = await start()
    expect(await query(url, 'SELECT number FROM kept')).toEqual([{ number: 7 }])
  })

  test('goes on when the terminal interrupts the whole group of the app', async () => {
    const { program, url } = await startInProgram()
    process.kill(-program.pid, 'SIGINT')
    expect(await query(url, 'SELECT 1 AS one')).toEqual([{ one: 1 }])
    program.process.stdin?.end()
    expect(await program.ended).toBe(0)
  })
})

describe('a second start on the same data folder', () => {
  test('is refused in a sentence that names the process and the way out', async () => {
    const { program } = await startInProgram()
    await expect(startEmbeddedServer(dataFolder)).rejects.toThrow(
      `Liquidus already runs on the data folder ${dataFolder} (process ${program.pid}). Stop that one first, or name another folder in LIQUIDUS_DATA`,
    )
  })

  test('of several at the same moment, one wins and the others are refused', async () => {
    const programs = [1, 2, 3].map(() => runScript(HOLDER, [dataFolder]))
    started.programs.push(...programs)
    const outcomes = await Promise.all(
      programs.map((program) =>
        program.line(/^postgresql:/).then(
          () => 'runs',
          () => (/already runs|several starts/.test(program.printed()) ? 'refused' : program.printed()),
        ),
      ),
    )
    expect(outcomes.sort()).toEqual(['refused', 'refused', 'runs'])
  })
})

describe('after a kill', () => {
  test('of the app, the server it left is stopped and the data is there', async () => {
    const { program, url } = await startInProgram()
    await query(url, 'CREATE TABLE kept AS SELECT 7 AS number')
    const left = postmaster()
    await kill(program)
    expect(isAlive(left)).toBe(true)
    const next = await start()
    expect(isAlive(left)).toBe(false)
    expect(await query(next.url, 'SELECT number FROM kept')).toEqual([{ number: 7 }])
  })

  test('of the server in the middle of writing, every acknowledged row is there', async () => {
    const { program, url } = await startInProgram()
    await query(url, 'CREATE TABLE kept (number int)')
    let acknowledged = 0
    const broken = withConnection(url, async (client) => {
      for (;;) {
        await client.query('INSERT INTO kept VALUES ($1)', [acknowledged + 1])
        acknowledged++
        if (acknowledged === 200) process.kill(postmaster(), 'SIGKILL')
      }
    })
    await expect(broken).rejects.toThrow()
    await kill(program)
    const next = await start()
    const [row] = await query(next.url, 'SELECT count(*)::int AS rows FROM kept')
    expect(acknowledged).toBeGreaterThanOrEqual(200)
    expect(row?.rows).toBeGreaterThanOrEqual(acknowledged)
    expect(row?.rows).toBeLessThanOrEqual(acknowledged + 1)
  })

  test('a lock whose process number has gone to another program is taken over', async () => {
    mkdirSync(dataFolder, { recursive: true, mode: 0o711 })
    writeFileSync(join(dataFolder, 'lock'), `${process.ppid}\nanother boot 1\n`)
    await expect(start()).resolves.toBeDefined()
  })

  test('a server mark whose process number has gone to another program is removed', async () => {
    await (await startEmbeddedServer(dataFolder)).stop()
    const other = spawn('sleep', ['600'], { ...serverAccount() })
    await once(other, 'spawn')
    try {
      const mark = join(dataFolder, 'postgres', 'postmaster.pid')
      writeFileSync(mark, `${other.pid}\n${join(dataFolder, 'postgres')}\n1700000000\n5432\n\n127.0.0.1\n`)
      await expect(start()).resolves.toBeDefined()
      expect(isAlive(other.pid ?? 0)).toBe(true)
    } finally {
      other.kill('SIGKILL')
    }
  })

  test('while the database files were being made, they are made anew', async () => {
    mkdirSync(join(dataFolder, 'postgres.new', 'base'), { recursive: true })
    writeFileSync(join(dataFolder, 'postgres.new', 'PG_VERSION'), '18\n')
    chmodSync(dataFolder, 0o711)
    const { url } = await start()
    expect(await query(url, 'SELECT 1 AS one')).toEqual([{ one: 1 }])
  })
})

test('a lost password is replaced by a new one', async () => {
  const first = await startEmbeddedServer(dataFolder)
  await query(first.url, 'CREATE TABLE kept AS SELECT 7 AS number')
  await first.stop()
  rmSync(join(dataFolder, 'postgres-password'))
  const { url } = await start()
  expect(url).not.toBe(first.url)
  expect(await query(url, 'SELECT number FROM kept')).toEqual([{ number: 7 }])
})

test('files of another PostgreSQL version are refused in a sentence', async () => {
  await (await startEmbeddedServer(dataFolder)).stop()
  writeFileSync(join(dataFolder, 'postgres', 'PG_VERSION'), '14\n')
  await expect(startEmbeddedServer(dataFolder)).rejects.toThrow(
    'was made by PostgreSQL 14, but PostgreSQL 18',
  )
  expect(existsSync(join(dataFolder, 'lock'))).toBe(false)
})

test.runIf(isRoot)('a data folder below one that only root may enter', async () => {
  chmodSync(above, 0o700)
  const { url } = await start()
  expect(await query(url, 'SELECT 1 AS one')).toEqual([{ one: 1 }])
})

test.runIf(isRoot)('programs below a folder that only root may enter', async () => {
  const { initdb } = await embeddedBinaries()
  const native = join(above, 'native')
  cpSync(join(dirname(initdb), '..'), native, { recursive: true, verbatimSymlinks: true })
  chmodSync(above, 0o700)
  const [postgres, initdbThere, pg_ctl] = ['postgres', 'initdb', 'pg_ctl'].map((name) =>
    join(native, 'bin', name),
  )
  mkdirSync(dataFolder)
  const binaries = { postgres: postgres ?? '', initdb: initdbThere ?? '', pg_ctl: pg_ctl ?? '' }
  const { folder } = await prepareCluster(dataFolder, binaries, serverAccount())
  expect(await startOnFreePort(folder, binaries, serverAccount(), true)).toBeGreaterThan(0)
  await stopServer(folder, binaries, serverAccount())
})

test('a data folder that cannot be made is refused in a sentence', async () => {
  writeFileSync(join(above, 'file'), '')
  await expect(startEmbeddedServer(join(above, 'file', 'data'))).rejects.toThrow(
    /The data folder .* cannot be used \(ENOTDIR\)\. Make it writable, or name another in LIQUIDUS_DATA\./,
  )
})
