/*
 * How long a board of 1,500 and one of 3,000 holes take to be read in their thread and judged, what memory that takes,
 * and how much later pages of others are answered meanwhile.
 * Run: npx tsx tests/bench/board-files.bench.ts
 */
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { readInWorker } from '@/lib/board-files/read-in-worker'
import { boardFindings } from '@/shared/board/judged/board-findings'
import { judgeProgramme } from '@/shared/gate/judgement'
import { fullProgramme } from '@/tests/bench/full-programme'
import { archiveOf, largeBoard, type LargeBoard } from '@/tests/bench/large-board'
import { factsWith, set } from '@/tests/rules/facts-builder'
import { SPECIFIED } from '@/tests/rules/board/judged-board'
import { copperFoil } from '@/shared/plan/parameters/laminate'

interface Case {
  readonly board: LargeBoard
  readonly maxMs: number
}
const CASES: readonly Case[] = [
  { board: { acrossMm: 100, upMm: 160, holes: 1500 }, maxMs: 3000 },
  { board: { acrossMm: 160, upMm: 200, holes: 3000 }, maxMs: 5000 },
]
const ROUNDS = 3
const MAX_MIB = 500
/** The thread takes one of two cores; a page that waits for it would wait for all of it. */
const MAX_LATER = 2
const PAGES = 40
const MIB = 1024 * 1024

const FACTS = factsWith({ values: [...SPECIFIED, set(copperFoil, '35')] })

async function readAndJudged(archive: Uint8Array): Promise<{ ms: number; holes: number; parts: number }> {
  const start = performance.now()
  const { board } = await readInWorker(archive, { roles: {}, watched: undefined })
  const findings = boardFindings(board, FACTS)
  const ms = performance.now() - start
  const parts = findings.reduce((sum, { finding }) => sum + (finding.parts?.length ?? 0), 0)
  return { ms, holes: board.holes.length, parts }
}

/** The most memory of the whole process, its threads counted, while something is done. */
async function peakMiB<Result>(work: () => Promise<Result>): Promise<{ mib: number; result: Result }> {
  let most = process.memoryUsage().rss
  const look = setInterval(() => (most = Math.max(most, process.memoryUsage().rss)), 10)
  const result = await work()
  clearInterval(look)
  return { mib: most / MIB, result }
}

/** A page of another person: a full programme judged anew, as large as its answer is. */
const server = createServer((_, response) => {
  const { findings } = judgeProgramme(fullProgramme())
  response.end(JSON.stringify([...findings.values()]))
})
await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready))
const { port } = server.address() as AddressInfo
async function pageMs(): Promise<number> {
  const start = performance.now()
  await (await fetch(`http://127.0.0.1:${port}`)).text()
  return performance.now() - start
}
async function pages(more: () => boolean): Promise<number[]> {
  const times: number[] = []
  while (more()) times.push(await pageMs())
  return times
}
const middle = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1] ?? NaN
/** Of ten pages the slowest but for one. */
const slow = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[Math.floor(times.length * 0.9)] ?? NaN

let failed = false
for (const { board, maxMs } of CASES) {
  const archive = archiveOf(largeBoard(board))
  const rounds: Awaited<ReturnType<typeof readAndJudged>>[] = []
  let mib = 0
  for (let round = 0; round < ROUNDS; round++) {
    const { mib: peak, result } = await peakMiB(() => readAndJudged(archive))
    rounds.push(result)
    mib = Math.max(mib, peak)
  }
  const best = Math.min(...rounds.map(({ ms }) => ms))
  failed ||= !(best < maxMs) || !(mib < MAX_MIB)
  console.log(
    `${board.holes} holes for leads on ${board.acrossMm} × ${board.upMm} mm (${rounds[0]!.holes} holes in all, ${rounds[0]!.parts} things judged, ${(archive.length / 1024).toFixed(0)} KiB): ` +
      `${best.toFixed(0)} ms, slowest of ${ROUNDS} ${Math.max(...rounds.map(({ ms }) => ms)).toFixed(0)} (wanted: under ${maxMs}); ` +
      `at most ${mib.toFixed(0)} MiB in the whole process (wanted: under ${MAX_MIB})`,
  )
}

const archive = archiveOf(largeBoard(CASES[0]!.board))
let left = PAGES
await pages(() => left-- > 0)
left = PAGES
const before = await pages(() => left-- > 0)
let reading = true
const read = readInWorker(archive, { roles: {}, watched: undefined }).finally(() => (reading = false))
const meanwhile = await pages(() => reading)
await read
server.close()
const later = middle(meanwhile) / middle(before)
failed ||= !(later < MAX_LATER) || meanwhile.length === 0
console.log(
  `a page of another: ${middle(before).toFixed(1)} ms alone, ${middle(meanwhile).toFixed(1)} while the first is read, ${later.toFixed(2)} times as long (wanted: under ${MAX_LATER}); ` +
    `of ten the second slowest ${slow(before).toFixed(1)} and ${slow(meanwhile).toFixed(1)} ms, ${meanwhile.length} pages`,
)
process.exitCode = failed ? 1 : 0
