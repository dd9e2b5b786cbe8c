/*
 * A works of 12 lines and 40 programmes with 500,000 readings beside an empty one: how long a reading takes to be
 * accepted, and how many statements the route card of a programme takes that a reading on another line leaves alone.
 * Run: npx tsx tests/bench/works.bench.ts
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { closeDatabase } from '@/lib/db/client'
import { startEmbeddedServer } from '@/lib/db/embedded-server'
import { migrate } from '@/lib/db/migrate'
import { judgedProgramme } from '@/lib/programme/judged'
import { readLineStates } from '@/lib/queries/works/line-states'
import { addPerson, addReadings, fillWorks, openLine, PROGRAMMES, READINGS } from '@/tests/bench/full-works'
import { statementsOf } from '@/tests/setup/statements-of'

const ROUNDS = 60
const MAX_RATIO = 2

async function withWorks<Result>(measure: () => Promise<Result>): Promise<Result> {
  const data = mkdtempSync(join(tmpdir(), 'liquidus-bench-'))
  const server = await startEmbeddedServer(data, { durable: true })
  try {
    process.env.DATABASE_URL = server.url
    await migrate(server.url, 'prisma/migrations')
    await addPerson('bench@test.invalid')
    return await measure()
  } finally {
    await closeDatabase()
    await server.stop()
    rmSync(data, { recursive: true, force: true })
  }
}

async function timeOfOneReading(): Promise<number> {
  const times: number[] = []
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now()
    await addReadings(0, READINGS + round, 1)
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
  await fillWorks()
  const cold = performance.now()
  for (let number = 0; number < PROGRAMMES; number++) await judgedProgramme(`P-${number}`)
  console.log(
    `${PROGRAMMES} programmes judged for the first time in ${((performance.now() - cold) / 1000).toFixed(1)} s`,
  )
  await timeOfOneReading()
  const reading = await timeOfOneReading()
  await judgedProgramme('P-0')
  await addReadings(0, READINGS + 1000, 1)
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
