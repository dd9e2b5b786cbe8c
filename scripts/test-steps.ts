import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { findChromium } from '@/scripts/find-chromium'
import { startSystemServer, systemPostgres } from '@/tests/setup/system-server'

/** How a step is run, once what it needs is there. */
export interface Run {
  /** What follows `node` on the command line. */
  command: readonly string[]
  env?: Record<string, string>
  cleanUp?: () => Promise<void>
}

export interface Step {
  name: string
  group: 'static' | 'rules' | 'commands' | 'faults' | 'browser'
  /** Whether it counts tests; otherwise the whole step is one check. */
  counts: boolean
  /** The sentence that says why it cannot run here, where that is no failure. */
  prepare: () => Promise<Run | { skip: string }>
}

const require = createRequire(import.meta.url)
const fileOf = (name: string, ...path: string[]) =>
  join(dirname(require.resolve(`${name}/package.json`)), ...path)

const npmScript = (name: string): Step => ({
  name,
  group: 'static',
  counts: false,
  prepare: () => Promise.resolve({ command: [npm(), 'run', '--silent', name] }),
})

/** npm's own program, so that a step can be run without a shell. */
function npm(): string {
  return (
    process.env.npm_execpath ??
    join(dirname(process.execPath), '..', 'lib', 'node_modules', 'npm', 'bin', 'npm-cli.js')
  )
}

/**
 * What the door, the guard and the line of hashes answer whatever server the rows are in: tried once, on the embedded one.
 * `every-command-once` performs each command on both, and verification reads each table back.
 */
const SAME_ON_ANY_SERVER = [
  'another-programmes-ids',
  'every-command-every-role',
  'every-route-guarded',
  'every-screen-guarded',
  'odd-input',
  'odd-route-names',
  'sign-in',
  'verify-tampered',
  'ways-out',
]

const vitest = (...projects: string[]) => [
  fileOf('vitest', 'vitest.mjs'),
  'run',
  ...projects.flatMap((project) => ['--project', project]),
]

/** All of `npm test`, in order: the certain first, the longest of them ahead. */
export const STEPS: readonly Step[] = [
  npmScript('check:lint'),
  npmScript('check:types'),
  npmScript('check:boundaries'),
  npmScript('check:dead-code'),
  npmScript('check:format'),
  npmScript('check:schema'),
  {
    name: 'rules, lib and app, with the branches they reach',
    group: 'rules',
    counts: true,
    // Counting makes tests slower by a third, as measured; the laws search at random and need their time.
    prepare: () =>
      Promise.resolve({
        command: [...vitest('rules', 'lib-and-app'), '--coverage', '--testTimeout', '180000'],
      }),
  },
  {
    name: 'whole boards',
    group: 'rules',
    counts: true,
    prepare: () => Promise.resolve({ command: vitest('whole-boards') }),
  },
  {
    name: 'commands, embedded PostgreSQL',
    group: 'commands',
    counts: true,
    prepare: () => Promise.resolve({ command: vitest('commands', 'commands-alone') }),
  },
  {
    name: 'commands, PostgreSQL of the system',
    group: 'commands',
    counts: true,
    prepare: prepareSystemDatabase,
  },
  {
    name: 'faults',
    group: 'faults',
    counts: true,
    prepare: () => Promise.resolve({ command: vitest('faults') }),
  },
  {
    name: 'browser',
    group: 'browser',
    counts: true,
    prepare: () =>
      Promise.resolve({
        command: [fileOf('playwright', 'cli.js'), 'test'],
        env: { CHROMIUM_PATH: findChromium() },
      }),
  },
]

async function prepareSystemDatabase(): Promise<Run | { skip: string }> {
  const system = systemPostgres()
  if (!system)
    return {
      skip: 'there is no PostgreSQL 15 or newer below /usr/lib/postgresql (apt-get install -y postgresql)',
    }
  const server = await startSystemServer(system.programs)
  const left = SAME_ON_ANY_SERVER.flatMap((name) => ['--exclude', `tests/commands/**/${name}.test.ts`])
  return {
    command: [...vitest('commands', 'commands-alone'), ...left],
    env: { TEST_DATABASE_URL: server.url },
    cleanUp: () => server.stop(),
  }
}
