import './generate.mjs'
import type { Counts } from '@/scripts/test-counts'
import type { Step } from '@/scripts/test-steps'

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
/** Side by side: they have nothing to do with each other, and the longest of them keeps one core alone. */
const pure = chosen.filter(({ group }) => ['static', 'rules'].includes(group))
/** One after another: each has servers of its own and wants both cores. */
const served = chosen.filter((step) => !pure.includes(step))

const queue = pure.values()
const counts = [...(await Promise.all([runAll(queue), runAll(queue)])), await runAll(served.values())]
const { passed, failed, skipped, failures } = counts.reduce(added)

if (failures.length > 0) say(`\nFailed:\n${failures.map((failure) => `  ${failure}`).join('\n')}`)
say(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`)
process.exitCode = failed > 0 ? 1 : 0

/** Runs what is left of the steps, each when the one before it has ended. */
async function runAll(steps: Iterator<Step>): Promise<Counts> {
  let sum = NOTHING
  for (let next = steps.next(); !next.done; next = steps.next()) sum = added(sum, await runStep(next.value))
  return sum
}
