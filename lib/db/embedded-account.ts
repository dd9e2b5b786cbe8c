import { execFile, execFileSync, type ExecFileException } from 'node:child_process'
import { statSync } from 'node:fs'
import { dirname } from 'node:path'
import { StartRefused } from '@/lib/settings/start-refused'

/** The user of the operating system that the database server runs as: PostgreSQL refuses to run as root. */
export interface ServerAccount {
  uid: number
  gid: number
}

const ACCOUNT = 'postgres'

/** The account for the server, made when there is none; undefined where this process itself is not root. */
export function serverAccount(): ServerAccount | undefined {
  if (process.getuid?.() !== 0) return undefined
  const existing = lookUpAccount()
  if (existing) return existing
  for (const command of [
    ['useradd', '--system', '--user-group', '--no-create-home', '--shell', '/usr/sbin/nologin', ACCOUNT],
    ['adduser', '-S', '-D', '-H', ACCOUNT],
  ]) {
    try {
      execFileSync(command[0] as string, command.slice(1), { stdio: 'ignore' })
      const made = lookUpAccount()
      if (made) return made
    } catch {
      // The other command may be the one this system has; when neither works, the sentence below says so.
    }
  }
  throw new StartRefused(
    `PostgreSQL does not run as root, and no user named ${ACCOUNT} could be made for it. ` +
      'Start Liquidus as an ordinary user, or set DATABASE_URL to a PostgreSQL of your own.',
  )
}

function lookUpAccount(): ServerAccount | undefined {
  const ask = (flag: string) =>
    Number(execFileSync('id', [flag, ACCOUNT], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }))
  try {
    return { uid: ask('-u'), gid: ask('-g') }
  } catch {
    return undefined
  }
}

export interface RunOptions {
  account: ServerAccount | undefined
  /** Paths the program must reach; where the account may not, it runs with the right to pass through folders. */
  reaches: readonly string[]
  input?: string
}

/**
 * Runs a program as the server's account, to its end.
 * Resolves with what it printed; rejects with an error that ends in what it said.
 */
export function runAs(program: string, args: readonly string[], options: RunOptions): Promise<string> {
  const [command, ...rest] = commandLine(program, args, options)
  const { account } = options
  const passesThrough = command === program
  return new Promise((resolve, reject) => {
    const child = execFile(
      command as string,
      rest,
      {
        ...(account && passesThrough ? account : {}),
        env: { ...process.env, LC_ALL: 'C', PGOPTIONS: '' },
        cwd: '/',
      },
      (error, output, complaints) =>
        error ? reject(failure(program, error, output + complaints)) : resolve(output),
    )
    child.stdin?.on('error', () => undefined)
    child.stdin?.end(options.input ?? '')
  })
}

function commandLine(program: string, args: readonly string[], { account, reaches }: RunOptions): string[] {
  if (!account || [program, ...reaches].every((path) => mayReach(path, account))) return [program, ...args]
  const onlyPassThrough = '+dac_read_search'
  const alsoWhenItAsksFirst = '+no_setuid_fixup'
  return [
    'setpriv',
    `--reuid=${account.uid}`,
    `--regid=${account.gid}`,
    '--clear-groups',
    `--securebits=${alsoWhenItAsksFirst}`,
    `--inh-caps=${onlyPassThrough}`,
    `--ambient-caps=${onlyPassThrough}`,
    program,
    ...args,
  ]
}

/** Whether the account may pass through every folder above a path. */
function mayReach(path: string, { uid, gid }: ServerAccount): boolean {
  for (let folder = dirname(path); ; folder = dirname(folder)) {
    const { mode, uid: owner, gid: group } = statSync(folder)
    const passing = owner === uid ? 0o100 : group === gid ? 0o010 : 0o001
    if ((mode & passing) === 0) return false
    if (folder === dirname(folder)) return true
  }
}

function failure(program: string, error: ExecFileException, said: string): Error {
  const notLetThrough = said.includes('setpriv:') ? said.trim() : undefined
  if (notLetThrough || error.code === 'ENOENT' || error.code === 'EACCES') {
    return new StartRefused(
      `${program} could not be started (${notLetThrough ?? error.code}). Check that the project and its data folder are in a place ` +
        `that the user ${ACCOUNT} may enter, or set DATABASE_URL to a PostgreSQL of your own.`,
      { cause: error },
    )
  }
  if (said.includes('No space left on device')) return fullDisk(error)
  return new Error(`${program} failed (${error.code ?? error.signal}):\n${said.trim()}`, { cause: error })
}

/** Nothing is lost by a full disk: what was acknowledged is kept, and the next start goes on from there. */
export function fullDisk(cause: unknown): StartRefused {
  return new StartRefused('The disk that holds the data folder is full. Free some space and start again.', {
    cause,
  })
}
