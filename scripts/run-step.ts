import { spawn } from 'node:child_process'
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { say } from '@/scripts/progress'
import { PROJECT_ROOT } from '@/scripts/project-root'
import { added, NOTHING, readCounts, type Counts } from '@/scripts/test-counts'
import type { Run, Step } from '@/scripts/test-steps'

const OUTPUT = join(PROJECT_ROOT, 'tests', '.output')

/** Runs one step and says how it went. Checks are silent unless they fail; tests say what they do. */
export async function runStep(step: Step): Promise<Counts> {
  const began = performance.now()
  const seconds = () => `${((performance.now() - began) / 1000).toFixed(0)} s`
  try {
    const run = await step.prepare()
    if ('skip' in run) {
      say(`– ${step.name}: skipped, ${run.skip}`)
      return { ...NOTHING, skipped: 1 }
    }
    const counts = await runToCounts(step, run).finally(run.cleanUp)
    say(`${counts.failed > 0 ? '✗' : '✓'} ${step.name} (${seconds()})`)
    return counts
  } catch (error) {
    say(`✗ ${step.name} (${seconds()}): ${(error as Error).message}`)
    return failedOnce(step)
  }
}

const failedOnce = ({ name }: Step): Counts => ({ ...NOTHING, failed: 1, failures: [name] })

async function runToCounts(step: Step, run: Run): Promise<Counts> {
  const report = join(OUTPUT, `${step.name.replaceAll(/\W+/g, '-')}.json`)
  mkdirSync(OUTPUT, { recursive: true })
  rmSync(report, { force: true })
  const reporting = step.counts ? reporters(step, report) : { args: [], env: {} }
  if (step.counts) say(`\n${step.name}`)
  const { succeeded, printed } = await spawnStep(
    [...run.command, ...reporting.args],
    { ...run.env, ...reporting.env },
    step.counts,
  )
  if (!succeeded && !step.counts) say(printed)
  const counts = (step.counts ? readCounts(report) : undefined) ?? NOTHING
  const ranNothing = counts.passed + counts.failed === 0
  if (!step.counts) return succeeded ? { ...NOTHING, passed: 1 } : failedOnce(step)
  if (ranNothing) throw new Error('it ran no test')
  return succeeded || counts.failed > 0 ? counts : added(counts, failedOnce(step))
}

function reporters({ group }: Step, report: string): { args: string[]; env: Record<string, string> } {
  if (group === 'browser')
    return { args: ['--reporter=list,json'], env: { PLAYWRIGHT_JSON_OUTPUT_FILE: report } }
  return { args: ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`], env: {} }
}

/** A step that takes longer hangs: told, it names itself, while CI that runs out of time names nothing. */
const MAX_STEP_MINUTES = 40

function spawnStep(
  command: readonly string[],
  env: Record<string, string>,
  aloud: boolean,
): Promise<{ succeeded: boolean; printed: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, command, {
      cwd: PROJECT_ROOT,
      env: { ...withoutInstallation(process.env), ...env },
      stdio: ['ignore', aloud ? 'inherit' : 'pipe', aloud ? 'inherit' : 'pipe'],
      timeout: MAX_STEP_MINUTES * 60_000,
      killSignal: 'SIGKILL',
    })
    let printed = ''
    for (const output of [child.stdout, child.stderr]) output?.on('data', (text) => (printed += String(text)))
    child.once('error', reject)
    child.once('close', (code, signal) => {
      if (signal) reject(new Error(`it was stopped by ${signal}; it may run for ${MAX_STEP_MINUTES} minutes`))
      else resolve({ succeeded: code === 0, printed: printed.trim() })
    })
  })
}

/** Tests must not see, let alone change, an installation that this shell is set up for. */
function withoutInstallation(variables: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const installation = /^(DATABASE_|LIQUIDUS_|NEXTAUTH_|OIDC_|PORT$|HOST$|LOG_LEVEL$)/
  return Object.fromEntries(
    Object.entries(variables).filter(([name]) => !installation.test(name)),
  ) as NodeJS.ProcessEnv
}
