import { spawnSync } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { say } from '@/scripts/progress'
import { PROJECT_ROOT } from '@/scripts/project-root'

/** `npm run bench`: every measurement of tests/bench, one at a time, or those whose names are given. */
const folder = join(PROJECT_ROOT, 'tests', 'bench')
const wanted = process.argv.slice(2)
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)))
  .sort()

let failed = 0
for (const name of names) {
  say(`\n${name}`)
  const { status } = spawnSync(process.execPath, ['--import', 'tsx', join(folder, name)], {
    cwd: PROJECT_ROOT,
    stdio: 'inherit',
  })
  if (status !== 0) failed++
}
say(`\n${names.length - failed} passed, ${failed} failed`)
process.exitCode = failed > 0 || names.length === 0 ? 1 : 0
