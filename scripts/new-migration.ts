import { readFile, mkdir, readdir, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import { PGlite } from '@electric-sql/pglite'
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils'
import { PrismaPGlite } from 'pglite-prisma-adapter'

/**
 * Development tool: writes the next migration, the difference between the
 * migrations folder and prisma/schema.prisma. Works offline, on a scratch
 * database in memory.
 *
 *   npm run new-migration -- name-of-change
 *   npm run new-migration -- --check   (fails on drift)
 */
const MIGRATIONS = path.resolve('prisma/migrations')
const SCHEMA = path.resolve('prisma/schema.prisma')

async function difference(): Promise<string> {
  const schema = await readFile(SCHEMA, 'utf8')
  const engine = await startEngine(schema)
  const { stdout } = await engine.diff({
    from: { tag: 'migrations', ...(await readMigrations()) },
    to: { tag: 'schemaDatamodel', files: [{ path: SCHEMA, content: schema }] },
    script: true,
    exitCode: null,
    filters: { externalTables: [], externalEnums: [] },
  })
  return stdout ?? ''
}

type Engine = import('@prisma/schema-engine-wasm/schema_engine_bg').SchemaEngine

async function startEngine(schema: string): Promise<Engine> {
  const require = createRequire(import.meta.url)
  const glue = await import('@prisma/schema-engine-wasm/schema_engine_bg')
  const bytes = await readFile(
    require.resolve('@prisma/schema-engine-wasm').replace('schema_engine.js', 'schema_engine_bg.wasm'),
  )
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': glue as never })
  ;(glue as unknown as { __wbg_set_wasm(wasm: unknown): void }).__wbg_set_wasm(instance.exports)
  ;(instance.exports['__wbindgen_start'] as () => void)()
  const adapter = bindMigrationAwareSqlAdapterFactory(new PrismaPGlite(new PGlite()))
  return glue.SchemaEngine.new({ datamodels: [[SCHEMA, schema]] }, () => {}, adapter)
}

async function readMigrations() {
  const names = (await readdir(MIGRATIONS, { withFileTypes: true }))
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
  return {
    baseDir: MIGRATIONS,
    lockfile: {
      path: 'migration_lock.toml',
      content: await readFile(path.join(MIGRATIONS, 'migration_lock.toml'), 'utf8'),
    },
    shadowDbInitScript: '',
    migrationDirectories: await Promise.all(
      names.sort().map(async (name) => ({
        path: name,
        migrationFile: {
          path: 'migration.sql',
          content: {
            tag: 'ok' as const,
            value: await readFile(path.join(MIGRATIONS, name, 'migration.sql'), 'utf8'),
          },
        },
      })),
    ),
  }
}

const [name] = process.argv.slice(2)
if (!name) {
  console.error('Usage: npm run new-migration -- name-of-change | --check')
  process.exit(2)
}
const script = await difference()
const changes = script.replace(/^--.*$/gm, '').trim()
if (name === '--check') {
  console.log(
    changes
      ? `prisma/schema.prisma and prisma/migrations differ:\n${script}`
      : 'The migrations give exactly the schema.',
  )
  process.exit(changes ? 1 : 0)
}
const stamp = new Date().toISOString().replace(/\D/g, '').slice(0, 14)
const folder = path.join(MIGRATIONS, `${stamp}_${name.replaceAll('-', '_')}`)
await mkdir(folder, { recursive: true })
await writeFile(path.join(folder, 'migration.sql'), script)
console.log(`Wrote ${path.relative('.', folder)}/migration.sql. Read it before you commit it.`)
process.exit(0)
