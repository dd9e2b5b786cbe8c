/*
 * How fast a trail verifies, against the least that anyone could do: parse the
 * same text as JSON and take one SHA-256 over its bytes. Run: npx tsx tests/bench/verify-trail.bench.ts
 */
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { appendEntry, type TrailEntry } from '@/shared/trail/entry'
import { verifyTrail } from '@/shared/trail/verify'

const ENTRY_COUNT = 50_000
const ROUNDS = 9
const MIN_RATIO = 0.5

function buildTrail(): TrailEntry[] {
  const entries: TrailEntry[] = []
  for (let index = 0; index < ENTRY_COUNT; index++) {
    const draft = {
      trailId: '0198c7a0-0000-7000-8000-000000000001',
      at: new Date(1_750_000_000_000 + index * 1000).toISOString(),
      actorId: `0198c7a0-0000-7000-8000-00000000000${index % 9}`,
      actorName: 'Ines Østermoor',
      command: 'revise-parameter',
      payload: {
        parameter: 'lead-holes',
        from: { diameterMm: 0.9, count: index },
        to: { diameterMm: 1.05, count: index + 1 },
        reason: `The lead is wider than the drawing says; measured on 30 pieces of lot ${index}.`,
        items: ['a1', 'b2', 'c3'],
      },
    }
    entries.push(appendEntry(entries.at(-1), draft, nativeSha256))
  }
  return entries
}

/** Measured in turn; the fastest round of each counts: whatever makes another slower is other work on the machine. */
function fastestMs(...works: (() => void)[]): number[] {
  const times = works.map((): number[] => [])
  for (let round = 0; round < ROUNDS; round++) {
    for (const [index, work] of works.entries()) {
      const start = performance.now()
      work()
      times[index]!.push(performance.now() - start)
    }
  }
  return times.map((list) => Math.min(...list))
}

const text = JSON.stringify(buildTrail())
const [bareMs = 0, verifyMs = 0] = fastestMs(
  () => {
    JSON.parse(text)
    nativeSha256(text)
  },
  () => {
    const verdict = verifyTrail(JSON.parse(text) as TrailEntry[], nativeSha256)
    if (!verdict.intact || verdict.entryCount !== ENTRY_COUNT) throw new Error(verdict.sentence)
  },
)

const ratio = bareMs / verifyMs
console.log(`${ENTRY_COUNT} entries, ${(text.length / 1e6).toFixed(1)} MB`)
console.log(`parse and one SHA-256: ${bareMs.toFixed(0)} ms; parse and verify: ${verifyMs.toFixed(0)} ms`)
console.log(`verification runs at ${ratio.toFixed(2)} of the bare speed (wanted: ${MIN_RATIO} or more)`)
if (!(ratio >= MIN_RATIO)) process.exitCode = 1
