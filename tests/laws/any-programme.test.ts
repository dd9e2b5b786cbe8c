import fc from 'fast-check'
import { expect, test } from 'vitest'
import { judgeProgramme, type Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { anyProgramme } from './any-programme'

/** What a judgement does wrong on any programme, each told with the rule it is in. */
function faultsOf({ judging }: Judgement): string[] {
  const thrown = [...judging.failures].map(([rule, { thrown: what }]) => `${rule} throws ${String(what)}`)
  const odd = [...judging.findings.values()].flatMap((finding) =>
    notFinite(finding, finding.rule).concat(oddSentences(finding, finding.rule)),
  )
  return [...thrown, ...odd]
}

/** Where a finding holds NaN or an infinity. */
function notFinite(value: unknown, place: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${place} is ${value}`]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([name, inner]) => notFinite(inner, `${place}.${name}`))
}

/** Where a sentence says what no person would: a number that is none, or a value that is not there. */
function oddSentences(value: unknown, place: string): string[] {
  if (typeof value === 'string')
    return /\b(NaN|undefined|Infinity|\[object Object\])\b|∞/.test(value) ? [`${place} says “${value}”`] : []
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([name, inner]) => oddSentences(inner, `${place}.${name}`))
}

const MAX_MS = 20_000
function judged(state: ProgrammeState): Judgement {
  const started = performance.now()
  const judgement = judgeProgramme(state)
  expect(performance.now() - started).toBeLessThan(MAX_MS)
  return judgement
}

test('law: whatever is specified, recorded, asked and signed, every rule finds something that is finite', () => {
  fc.assert(
    fc.property(anyProgramme, (state) => {
      expect(faultsOf(judged(state))).toEqual([])
    }),
    { numRuns: Number(process.env['ANY_RUNS'] ?? 60) },
  )
})
