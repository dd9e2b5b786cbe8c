/*
 * How fast readings are imported, against the CSV library alone reading the same
 * bytes in one go. Run: npx tsx tests/bench/csv-import.bench.ts
 */
import { parse } from 'csv-parse/sync'
import { parseReadings } from '@/lib/readings/parse-readings'
import { INSTANT_FIELD, type ReadingField } from '@/lib/readings/reading-field'

const ROWS = 100_000
const ROUNDS = 9
const MIN_RATIO = 0.5

const FIELDS: readonly ReadingField[] = [
  INSTANT_FIELD,
  { name: 'densityGPerMl', label: 'Density', kind: 'number', min: 0.5, max: 1.5, required: true },
  { name: 'temperatureC', label: 'Temperature', kind: 'number', min: -40, max: 80, required: true },
]

function buildFile(): Buffer {
  const lines = ['Time;Density [g/ml];Temperature [°C]']
  for (let row = 0; row < ROWS; row++) {
    const at = new Date(1_750_000_000_000 + row * 60_000).toISOString()
    const density = (0.82 + Math.sin(row) / 100).toFixed(4).replace('.', ',')
    const temperature = (22 + 3 * Math.cos(row)).toFixed(2).replace('.', ',')
    lines.push(`${at};${density};${temperature}`)
  }
  return Buffer.from(`${lines.join('\r\n')}\r\n`)
}

async function timeMs(work: () => unknown): Promise<number> {
  const start = performance.now()
  await work()
  return performance.now() - start
}

/** The fastest round counts: whatever makes another slower is other work on the machine. */
const fastest = (times: readonly number[]): number => Math.min(...times)

const file = buildFile()
const alone: number[] = []
const whole: number[] = []
let progressCalls = 0
// In turn, so that a busy machine slows both alike.
for (let round = 0; round < ROUNDS; round++) {
  alone.push(
    await timeMs(() => {
      if (parse(file, { delimiter: ';' }).length !== ROWS + 1) throw new Error('The library lost rows.')
    }),
  )
  whole.push(
    await timeMs(async () => {
      const result = await parseReadings(file, FIELDS, { onProgress: () => (progressCalls += 1) })
      if (!result.ok || result.readings.count !== ROWS) throw new Error('The import lost rows.')
    }),
  )
}

const ratio = fastest(alone) / fastest(whole)
console.log(
  `${ROWS} rows of 3 columns, ${(file.length / 1e6).toFixed(1)} MB, ${progressCalls / ROUNDS} progress calls each`,
)
console.log(`library alone: ${fastest(alone).toFixed(0)} ms; import: ${fastest(whole).toFixed(0)} ms`)
console.log(`the import runs at ${ratio.toFixed(2)} of the library's speed (wanted: ${MIN_RATIO} or more)`)
if (!(ratio >= MIN_RATIO)) process.exitCode = 1
