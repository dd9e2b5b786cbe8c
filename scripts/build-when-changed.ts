import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { step } from '@/scripts/progress'
import { PROJECT_ROOT } from '@/scripts/project-root'
import { NEXT, runQuietly } from '@/scripts/run-program'

/** All that ends up in a build, or decides how it is made. */
const FOLDERS = ['app', 'lib', 'shared', 'public']
const FILES = [
  'next.config.ts',
  'postcss.config.mjs',
  'tsconfig.json',
  'package-lock.json',
  'prisma/schema.prisma',
  'proxy.ts',
  'instrumentation.ts',
  'instrumentation-client.ts',
]
const GENERATED = join('lib', 'db', 'generated')

const STAMP = join(PROJECT_ROOT, '.next', 'sources-stamp')

/** Builds the app, unless the last build was of exactly these sources. */
export async function buildWhenChanged(signal: AbortSignal): Promise<void> {
  const stamp = sourcesStamp()
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === stamp) return
  await step('building the app', () =>
    runQuietly([NEXT, 'build'], { signal, env: { NODE_ENV: 'production' } }),
  )
  writeFileSync(STAMP, stamp)
}

function sourcesStamp(): string {
  const hash = createHash('sha256').update(process.version)
  for (const path of [...FILES, ...FOLDERS.flatMap(filesBelow)].sort()) {
    const absolute = join(PROJECT_ROOT, path)
    if (!existsSync(absolute)) continue
    const content = readFileSync(absolute)
    hash.update(`${path}\0${content.length}\0`).update(content)
  }
  return hash.digest('hex')
}

function filesBelow(folder: string): string[] {
  const absolute = join(PROJECT_ROOT, folder)
  if (!existsSync(absolute)) return []
  return readdirSync(absolute, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(PROJECT_ROOT.length))
    .filter((path) => !path.startsWith(GENERATED))
}
