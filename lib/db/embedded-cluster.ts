import { chownSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { runAs, type ServerAccount } from '@/lib/db/embedded-account'
import type { EmbeddedBinaries } from '@/lib/db/embedded-binaries'
import { keptSecret } from '@/lib/settings/kept-secret'
import { StartRefused } from '@/lib/settings/start-refused'

/** The one role that may sign in over the network card (loopback), and the database it owns. */
export const EMBEDDED_ROLE = 'liquidus'
export const EMBEDDED_DATABASE = 'liquidus'

/** Nobody but the app's role signs in, from this machine, with the password; the superuser not at all. */
const WHO_MAY_SIGN_IN = `host all ${EMBEDDED_ROLE} 127.0.0.1/32 scram-sha-256\n`

/** The same letters, order and case rules on every platform: code points of UTF-8, not the machine's locale. */
const INITDB_OPTIONS = [
  '--username=postgres',
  '--auth=reject',
  '--encoding=UTF8',
  '--locale=C',
  '--locale-provider=builtin',
  '--builtin-locale=C.UTF-8',
]

export interface Cluster {
  /** Folder of the database files. */
  folder: string
  password: string
}

/**
 * The private database files in the data folder, made when there are none.
 * They are made aside and moved into place, so a start killed half way leaves nothing to trip over.
 */
export async function prepareCluster(
  dataFolder: string,
  { postgres, initdb }: EmbeddedBinaries,
  account: ServerAccount | undefined,
): Promise<Cluster> {
  const folder = join(dataFolder, 'postgres')
  const hadPassword = existsSync(join(dataFolder, 'postgres-password'))
  const password = keptSecret(dataFolder, 'postgres-password')
  if (existsSync(join(folder, 'PG_VERSION'))) {
    await refuseOtherVersion(folder, postgres, account)
    if (!hadPassword) await runSingleUser(folder, postgres, account, [setPassword('ALTER', password)])
    return { folder, password }
  }
  const aside = `${folder}.new`
  rmSync(aside, { recursive: true, force: true })
  mkdirSync(aside, { mode: 0o700 })
  if (account) chownSync(aside, account.uid, account.gid)
  await runAs(initdb, ['-D', aside, ...INITDB_OPTIONS], { account, reaches: [aside] })
  writeFileSync(join(aside, 'pg_hba.conf'), WHO_MAY_SIGN_IN)
  await runSingleUser(aside, postgres, account, [
    setPassword('CREATE', password),
    `CREATE DATABASE ${EMBEDDED_DATABASE} OWNER ${EMBEDDED_ROLE};`,
  ])
  renameSync(aside, folder)
  return { folder, password }
}

/** The password is base64url, so it needs no quoting. */
function setPassword(verb: 'CREATE' | 'ALTER', password: string): string {
  return `${verb} ROLE ${EMBEDDED_ROLE} LOGIN CREATEDB PASSWORD '${password}';`
}

/** Runs statements, one a line, in a server that listens to nobody, ends with its input and stops at the first error. */
async function runSingleUser(
  folder: string,
  postgres: string,
  account: ServerAccount | undefined,
  statements: readonly string[],
): Promise<void> {
  const input = statements.map((statement) => `${statement}\n`).join('')
  await runAs(postgres, ['--single', '-c', 'exit_on_error=true', '-D', folder, 'postgres'], {
    account,
    reaches: [folder],
    input,
  })
}

async function refuseOtherVersion(
  folder: string,
  postgres: string,
  account: ServerAccount | undefined,
): Promise<void> {
  const made = readFileSync(join(folder, 'PG_VERSION'), 'utf8').trim()
  const version = await runAs(postgres, ['--version'], { account, reaches: [] })
  const present = /(\d+)\./.exec(version)?.[1]
  if (made === present) return
  throw new StartRefused(
    `The database in ${folder} was made by PostgreSQL ${made}, but PostgreSQL ${present} is installed now. ` +
      `To take over what is in it: start the Liquidus that brought PostgreSQL ${made}, save the database with ` +
      '`pg_dump --clean --if-exists` while it runs, start this one with another data folder (LIQUIDUS_DATA), ' +
      'read the saved file in with `psql`, and copy the folder "evidence" into the new data folder.',
  )
}
