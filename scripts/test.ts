import './generate.mjs'
import type { Counts } from '@/scripts/test-counts'

/**
 * `npm test`: types, lint, boundaries, dead code, format, schema, rules, commands on both databases, faults,
 * browser. Names of groups on the command line run those alone. Closes with what failed and the sum of all tests and checks.
 */
if (process.exitCode) process.exit()
const { STEPS } = await import('@/scripts/test-steps')
const { runStep } = await import('@/scripts/run-step')
const { added, NOTHING } = await import('@/scripts/test-counts')
const { say } = await import('@/scripts/progress')

const wanted = process.argv.slice(2)
const unknown = wanted.filter((group) => !STEPS.some((step) => step.group === group))
if (unknown.length > 0) {
  say(
    `There is no group ${unknown.join(', ')}. There are: ${[...new Set(STEPS.map(({ group }) => group))].join(', ')}.`,
  )
  process.exit(1)
}

const chosen = STEPS.filter(({ group }) => wanted.length === 0 || wanted.includes(group))
const checks = chosen.filter(({ counts }) => !counts)
const suites = chosen.filter(({ counts }) => counts)

/** Two checks at a time, for they have nothing to do with each other; suites one after another. */
const lanes = [checks.filter((_, index) => index % 2 === 0), checks.filter((_, index) => index % 2 === 1)]
const inLanes = await Promise.all(lanes.map(runAll))
const { passed, failed, skipped, failures } = [...inLanes, await runAll(suites)].reduce(added)

if (failures.length > 0) say(`\nFailed:\n${failures.map((failure) => `  ${failure}`).join('\n')}`)
say(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`)
process.exitCode = failed > 0 ? 1 : 0

async function runAll(steps: typeof chosen): Promise<Counts> {
  let sum = NOTHING
  for (const step of steps) sum = added(sum, await runStep(step))
  return sum
}
