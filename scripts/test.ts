import './generate.mjs'

/**
 * `npm test`: types, lint, boundaries, dead code, format, schema, rules, commands on both databases, faults,
 * browser. Names of groups on the command line run those alone. Closes with the sum of all tests and checks.
 */
if (process.exitCode) process.exit()
const { STEPS } = await import('@/scripts/test-steps')
const { runStep } = await import('@/scripts/run-step')
const { say } = await import('@/scripts/progress')

const wanted = process.argv.slice(2)
const unknown = wanted.filter((group) => !STEPS.some((step) => step.group === group))
if (unknown.length > 0) {
  say(
    `There is no group ${unknown.join(', ')}. There are: ${[...new Set(STEPS.map(({ group }) => group))].join(', ')}.`,
  )
  process.exit(1)
}

const total = { passed: 0, failed: 0, skipped: 0 }
const chosen = STEPS.filter(({ group }) => wanted.length === 0 || wanted.includes(group))
const checks = chosen.filter(({ counts }) => !counts)
const suites = chosen.filter(({ counts }) => counts)

/** Two checks at a time, for they have nothing to do with each other; suites one after another. */
const lanes = [checks.filter((_, index) => index % 2 === 0), checks.filter((_, index) => index % 2 === 1)]
for (const lane of await Promise.all(lanes.map(runAll))) add(lane)
add(await runAll(suites))

say(
  `\n${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ''}`,
)
process.exitCode = total.failed > 0 ? 1 : 0

async function runAll(steps: typeof chosen): Promise<typeof total> {
  const sum = { passed: 0, failed: 0, skipped: 0 }
  for (const step of steps) {
    const { passed, failed, skipped } = await runStep(step)
    sum.passed += passed
    sum.failed += failed
    sum.skipped += skipped
  }
  return sum
}

function add({ passed, failed, skipped }: typeof total): void {
  total.passed += passed
  total.failed += failed
  total.skipped += skipped
}
