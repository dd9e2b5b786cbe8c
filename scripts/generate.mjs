import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/**
 * Generates the database client from prisma/schema.prisma, when it has changed since. Needs no network:
 * Prisma's command line wants its native schema engine to be there, but generation never runs it,
 * so any program may stand in its place.
 *
 * Runs after every install (`--after-install`), where a missing tool is no reason to fail: `npm start` and
 * `npm test` generate again.
 */
const root = fileURLToPath(new URL('..', import.meta.url))
const stampPath = join(root, 'lib/db/generated/stamp.txt')
const afterInstall = process.argv.includes('--after-install')

const manifest = findManifest()
if (!manifest) fail('Prisma is not installed, so the database client was not generated. Run npm ci.')
else if (readStamp() !== stampOf(manifest)) generate(manifest)

function generate(manifest) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(dirname(manifest), 'build', 'index.js'), 'generate'],
    {
      cwd: root,
      encoding: 'utf8',
      env: {
        ...process.env,
        PRISMA_SCHEMA_ENGINE_BINARY: process.env.PRISMA_SCHEMA_ENGINE_BINARY || process.execPath,
        PRISMA_HIDE_UPDATE_MESSAGE: '1',
        CHECKPOINT_DISABLE: '1',
      },
    },
  )
  if (status === 0) writeFileSync(stampPath, stampOf(manifest))
  else fail(`The database client could not be generated from prisma/schema.prisma.\n${stdout}${stderr}`)
}

function stampOf(manifest) {
  const hash = createHash('sha256')
  for (const path of [join(root, 'prisma/schema.prisma'), manifest]) hash.update(readFileSync(path))
  return hash.digest('hex')
}

function readStamp() {
  return existsSync(stampPath) ? readFileSync(stampPath, 'utf8') : undefined
}

function findManifest() {
  try {
    return createRequire(import.meta.url).resolve('prisma/package.json')
  } catch {
    return undefined
  }
}

function fail(sentence) {
  console.error(sentence)
  process.exitCode = afterInstall ? 0 : 1
}
