/*
 * How long the judging of a full programme takes, in one thread: with nothing
 * known before, and after one parameter has changed.
 * Run: npx tsx tests/bench/judge-programme.bench.ts
 */
import { judgeProgramme } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { fullProgramme, readingsIn } from '@/tests/bench/full-programme'

const ROUNDS = 9
const MAX_COLD_MS = 50
const MAX_AFTER_CHANGE_MS = 5

function timed<Result>(work: () => Result): { ms: number; result: Result } {
  const start = performance.now()
  const result = work()
  return { ms: performance.now() - start, result }
}

const middle = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1] ?? NaN

/** The same state with another value for one parameter; everything else keeps its identity, as when reloaded. */
const withValue = (state: ProgrammeState, key: string, value: unknown): ProgrammeState => ({
  ...state,
  facts: { ...state.facts, values: new Map(state.facts.values).set(key, value) },
})

/** A value of the same kind that is not the present one; undefined where there is no other. */
function another({ shape, schema }: Parameter, value: unknown): unknown {
  if (shape.kind === 'table') return structuredClone(value)
  const { column } = shape
  if (column.kind === 'choice') return column.options.find((option) => option.value !== value)?.value
  if (column.kind === 'flag') return !value
  if (typeof value !== 'number') return undefined
  return [value + 1, value - 1, value * 1.01, value * 0.99].find((other) => schema.safeParse(other).success)
}

/** The fastest round counts: whatever makes another slower is other work on the machine. */
const cold: number[] = []
for (let round = 0; round < ROUNDS; round++) {
  const programme = fullProgramme()
  cold.push(timed(() => judgeProgramme(programme)).ms)
}

const state = fullProgramme()
const before = judgeProgramme(state)
const verdicts = new Map<string, number>()
for (const { verdict } of before.findings.values()) verdicts.set(verdict, (verdicts.get(verdict) ?? 0) + 1)

const changed = ALL_PARAMETERS.flatMap((parameter) => {
  const value = another(parameter, state.facts.values.get(parameter.key))
  if (value === undefined || !state.facts.values.has(parameter.key)) return []
  const next = withValue(state, parameter.key, value)
  const times = Array.from({ length: ROUNDS }, () => timed(() => judgeProgramme(next, before)).ms)
  return [{ key: parameter.key, ms: Math.min(...times) }]
}).sort((one, other) => other.ms - one.ms)

const coldMs = Math.min(...cold)
const slowest = changed[0] ?? { key: 'none', ms: NaN }
const over = changed.filter(({ ms }) => !(ms < MAX_AFTER_CHANGE_MS))
console.log(
  `${before.findings.size} rules (${[...verdicts].map(([verdict, count]) => `${count} ${verdict}`).join(', ')}), ` +
    `${state.facts.records.lots.length} lots, ${readingsIn(state)} readings`,
)
console.log(
  `with nothing known: ${coldMs.toFixed(1)} ms (first of the process ${(cold[0] ?? NaN).toFixed(0)}, middle ${middle(cold).toFixed(1)}; wanted: under ${MAX_COLD_MS})`,
)
console.log(
  `after one of ${changed.length} parameters changed: middle ${middle(changed.map(({ ms }) => ms)).toFixed(2)} ms, ` +
    `slowest ${slowest.ms.toFixed(2)} ms for ${slowest.key} (wanted: under ${MAX_AFTER_CHANGE_MS}); ${over.length} over`,
)
for (const { key, ms } of over.slice(0, 10)) console.log(`  ${key}: ${ms.toFixed(1)} ms`)
if (!(coldMs < MAX_COLD_MS) || over.length > 0 || changed.length === 0) process.exitCode = 1
