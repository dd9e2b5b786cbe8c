/*
 * A works of 12 lines and 40 programmes with 500,000 readings beside an empty one: how long a reading takes to be
 * accepted, and how many statements the route card of a programme takes that a reading on another line leaves alone.
 * Run: npx tsx tests/bench/works.bench.ts
 */
import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { perform } from '@/lib/commands/perform'
import { closeDatabase, database } from '@/lib/db/client'
import { startEmbeddedServer } from '@/lib/db/embedded-server'
import { migrate } from '@/lib/db/migrate'
import { judgedProgramme } from '@/lib/programme/judged'
import { readLineStates } from '@/lib/queries/works/line-states'
import { statementsOf } from '@/tests/setup/statements-of'

const LINES = 12
const PROGRAMMES = 40
const READINGS = 500_000
const A_BATCH = 10_000
const ROUNDS = 60
const MAX_RATIO = 2
const START = Date.parse('2024-01-01T00:00:00Z')
const MINUTE = 60_000

const person = randomUUID()
const give: typeof perform = async (...given) => {
  const outcome = await perform(...given)
  if (!outcome.ok) throw new Error(outcome.message)
  return outcome
}
const key = () => ({ key: randomUUID() })

async function withWorks<Result>(measure: () => Promise<Result>): Promise<Result> {
  const data = mkdtempSync(join(tmpdir(), 'liquidus-bench-'))
  const server = await startEmbeddedServer(data, { durable: true })
  try {
    process.env.DATABASE_URL = server.url
    await migrate(server.url, 'prisma/migrations')
    await database().person.create({
      data: {
        id: person,
        email: 'bench@test.invalid',
        name: 'Bench',
        worksDepartment: 'production',
        createdAt: new Date(),
      },
    })
    return await measure()
  } finally {
    await closeDatabase()
    await server.stop()
    rmSync(data, { recursive: true, force: true })
  }
}

async function openLine(line: number): Promise<void> {
  await give(person, 'open-line', { code: `L${line}`, name: 'A line' }, key())
  await give(person, 'open-machine', { line: `L${line}`, code: `W${line}`, kind: 'wave' }, key())
  await give(
    person,
    'open-log',
    { machine: `W${line}`, code: `B${line}`, characteristic: 'bath-temperature', instrument: null },
    key(),
  )
}

async function openProgramme(number: number): Promise<void> {
  const code = `P-${number}`
  await give(
    person,
    'open-programme',
    {
      code,
      title: 'A board',
      department: 'production',
      productClass: '2',
      alloyFamily: 'tin-lead',
      serviceYears: 10,
      environment: 'GF',
      annualVolume: 100,
    },
    key(),
  )
  await give(person, 'state-line', { programme: code, line: `L${number % LINES}` }, key())
  const rows = Array.from({ length: 20 }, (_, day) => ({
    doneOn: new Date(START + day * 24 * 60 * MINUTE).toISOString().slice(0, 10),
    worker: 'A',
    skill: 'machine-soldering',
    assemblies: 5,
    line: `L${number % LINES}`,
  }))
  await give(person, 'add-record', { programme: code, kind: 'soldering-run', rows }, key())
}

const add = (line: number, first: number, count: number) =>
  give(
    person,
    'add-readings',
    {
      machine: `W${line}`,
      log: `B${line}`,
      readings: {
        count,
        columns: {
          at: Array.from({ length: count }, (_, index) => START + (first + index) * MINUTE),
          bathC: Array.from({ length: count }, (_, index) => 245 + ((first + index) % 7) / 2),
        },
      },
      file: null,
      mapping: null,
    },
    key(),
  )

async function timeOfOneReading(): Promise<number> {
  const times: number[] = []
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now()
    await add(0, READINGS + round, 1)
    times.push(performance.now() - start)
  }
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)]!
}

const empty = await withWorks(async () => {
  await openLine(0)
  await timeOfOneReading()
  return timeOfOneReading()
})

const full = await withWorks(async () => {
  for (let line = 0; line < LINES; line++) await openLine(line)
  for (let number = 0; number < PROGRAMMES; number++) await openProgramme(number)
  for (let first = 0; first < READINGS; first += A_BATCH)
    await add((first / A_BATCH) % LINES, Math.floor(first / A_BATCH / LINES) * A_BATCH, A_BATCH)
  const cold = performance.now()
  for (let number = 0; number < PROGRAMMES; number++) await judgedProgramme(`P-${number}`)
  console.log(
    `${PROGRAMMES} programmes judged for the first time in ${((performance.now() - cold) / 1000).toFixed(1)} s`,
  )
  await timeOfOneReading()
  const reading = await timeOfOneReading()
  await judgedProgramme('P-0')
  await add(0, READINGS + 1000, 1)
  const untouched = await statementsOf(() => judgedProgramme('P-1'))
  const touched = await statementsOf(() => judgedProgramme('P-0'))
  await readLineStates()
  const home = await statementsOf(() => readLineStates())
  const start = performance.now()
  await readLineStates()
  return { reading, untouched, touched, home, homeMs: performance.now() - start }
})

const ratio = full.reading / empty
console.log(
  `a reading: ${empty.toFixed(1)} ms on an empty works, ${full.reading.toFixed(1)} ms on a full one`,
)
console.log(`ratio ${ratio.toFixed(2)} (wanted: under ${MAX_RATIO})`)
console.log(
  `after a reading on line 0: ${full.untouched} statements for a programme of line 1 (wanted: 3), ${full.touched} for one of line 0`,
)
console.log(`the works’ home: ${full.home} statements, ${full.homeMs.toFixed(0)} ms`)
if (!(ratio < MAX_RATIO) || full.untouched > 3) process.exitCode = 1
