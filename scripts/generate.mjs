import { spawnSync } from 'node:child_process'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

/**
 * Generates the database client from prisma/schema.prisma, without the network: Prisma's command line wants
 * its native schema engine to be there, but generation never runs it, so any program may stand in its place.
 *
 * Runs after every install (`--after-install`), where a missing tool is no reason to fail: `npm start` and
 * `npm test` generate again.
 */
const afterInstall = process.argv.includes('--after-install')
const commandLine = findCommandLine()

if (commandLine) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [commandLine, 'generate'], {
    encoding: 'utf8',
    env: {
      ...process.env,
      PRISMA_SCHEMA_ENGINE_BINARY: process.env.PRISMA_SCHEMA_ENGINE_BINARY || process.execPath,
      PRISMA_HIDE_UPDATE_MESSAGE: '1',
      CHECKPOINT_DISABLE: '1',
    },
  })
  if (status !== 0) {
    console.error(`The database client could not be generated from prisma/schema.prisma.\n${stdout}${stderr}`)
    process.exitCode = afterInstall ? 0 : 1
  }
} else {
  console.error('Prisma is not installed, so the database client was not generated. Run npm ci.')
  process.exitCode = afterInstall ? 0 : 1
}

function findCommandLine() {
  try {
    const manifest = createRequire(import.meta.url).resolve('prisma/package.json')
    return join(dirname(manifest), 'build', 'index.js')
  } catch {
    return undefined
  }
}
