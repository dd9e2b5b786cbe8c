import { join } from 'node:path'
import { sweepSignIns } from '@/lib/auth/sweep-sign-ins'
import { closeDatabase } from '@/lib/db/client'
import { startEmbeddedServer, type EmbeddedServer } from '@/lib/db/embedded-server'
import { prepareTables, type DemoState } from '@/lib/db/first-run'
import { turns } from '@/lib/db/turns'
import { digestDaily } from '@/lib/digest/digest-daily'
import { sendDigests } from '@/lib/digest/send-digests'
import { carryConcessions } from '@/lib/programme/carry-concessions'
import { carryToWorks } from '@/lib/programme/works/carry-to-works'
import { sweepDaily, sweepInstalled } from '@/lib/evidence/sweep-installed'
import { prepareDataFolder } from '@/lib/settings/data-folder'
import { refuseHeldFolder } from '@/lib/settings/data-folder-lock'
import { keptSecret } from '@/lib/settings/kept-secret'
import type { Settings } from '@/lib/settings/settings'
import { StartRefused } from '@/lib/settings/start-refused'
import { verifyInstalled, verifyNightly } from '@/lib/trail/verify-nightly'
import { buildWhenChanged } from '@/scripts/build-when-changed'
import { refuseTakenAddress } from '@/scripts/free-address'
import { patiently } from '@/scripts/patience'
import { say, step } from '@/scripts/progress'
import { PROJECT_ROOT } from '@/scripts/project-root'
import { readSettingsWithFile } from '@/scripts/settings-with-file'
import { loadDemo, sayDemoSignIns, sayNewAdministrator } from '@/scripts/sign-ins'
import { stopSignal } from '@/scripts/stop-signal'
import { startWebServer } from '@/scripts/web-server'

type Mode = 'start' | 'dev'

/**
 * Brings the whole app up and keeps it up until it is told to stop: then the web server
 * ends first, the database after it, and the exit code is 0. A start that cannot go on ends with 1 and a sentence.
 */
export async function runApp(mode: Mode): Promise<void> {
  const stopping = stopSignal()
  let database: EmbeddedServer | undefined
  try {
    const settings = readSettingsWithFile()
    if (!settings.databaseUrl) await patiently(() => refuseHeldFolder(settings.dataFolder))
    await patiently(() => refuseTakenAddress(settings.host, settings.port))
    prepareDataFolder(settings.dataFolder)
    say(`Liquidus, with its data in ${settings.dataFolder}`)
    const env = environmentOf(settings)
    if (!settings.databaseUrl) {
      database = await step('starting the private database', () => startEmbeddedServer(settings.dataFolder))
      env.DATABASE_URL = database.url
    }
    await bringUp(mode, settings, env, stopping, database)
  } catch (error) {
    if (!stopping.aborted) {
      process.stderr.write(
        `${error instanceof StartRefused ? error.message : String((error as Error).stack)}\n`,
      )
      process.exitCode = 1
    }
  } finally {
    await database?.stop()
  }
  if (stopping.aborted) say('Stopped.')
  process.exit()
}

/** What the web server must know beyond what was set: it reads its settings from these. */
function environmentOf(settings: Settings): Record<string, string> {
  return {
    LIQUIDUS_DATA: settings.dataFolder,
    NEXTAUTH_URL: settings.url,
    NEXTAUTH_SECRET: settings.sessionSecret ?? keptSecret(settings.dataFolder, 'session-secret'),
    // Without a named address, people on this machine may type localhost or 127.0.0.1: both must work.
    ...(settings.urlIsNamed ? {} : { AUTH_TRUST_HOST: 'true' }),
  }
}

async function bringUp(
  mode: Mode,
  settings: Settings,
  env: Record<string, string>,
  stopping: AbortSignal,
  database: EmbeddedServer | undefined,
): Promise<void> {
  Object.assign(process.env, env)
  const demo = await prepareBoth(mode, settings, stopping)
  if (demo === 'absent') await unlessStopped(stopping, sayNewAdministrator)
  await closeDatabase()
  const server = await step('starting the web server', () => startWebServer(mode, settings, env, stopping))
  say(`\nReady: ${settings.url}\n`)
  if (demo !== 'absent') await sayDemoSignIns()
  say('Stop with Ctrl+C.')
  const over = new AbortController()
  const ending = AbortSignal.any([stopping, over.signal])
  const upkeep = [
    sweepDaily(ending, () => inTurn(() => sweepSignIns().then(() => sweepInstalled()))),
    ...(settings.mail ? [digestDaily(ending, () => inTurn(() => sendDigests()), settings.mail)] : []),
    verifyNightly(ending, () => verifyInstalled(ending)),
  ]
  const told = new Promise<undefined>((resolve) =>
    stopping.addEventListener('abort', () => resolve(undefined)),
  )
  const end = stopping.aborted
    ? undefined
    : await Promise.race([
        told,
        server.ended.then((how) => `The web server ended by itself (${how}).`),
        ...(database ? [database.ended.then(() => 'The database ended by itself.')] : []),
      ])
  say('\nStopping …')
  await server.stop()
  over.abort()
  await Promise.all(upkeep)
  if (end) throw new StartRefused(`${end} Start Liquidus again.`)
}

/** One piece of upkeep at a time uses the database, and leaves no connection behind. */
async function inTurn<Result>(work: () => Promise<Result>): Promise<Result> {
  const giveBack = await upkeepTurn()
  try {
    return await work()
  } finally {
    await closeDatabase()
    giveBack()
  }
}
const upkeepTurn = turns(1)

/** The database and the build have nothing to do with each other; side by side the first start is shorter. */
async function prepareBoth(mode: Mode, settings: Settings, stopping: AbortSignal): Promise<DemoState> {
  const otherFailed = new AbortController()
  const signal = AbortSignal.any([stopping, otherFailed.signal])
  try {
    const [demo] = await Promise.all([
      unlessStopped(stopping, () => prepareDatabase(settings)),
      mode === 'start' ? buildWhenChanged(signal) : undefined,
    ])
    return demo
  } catch (error) {
    otherFailed.abort()
    throw error
  }
}

async function prepareDatabase({ demo }: Settings): Promise<DemoState> {
  const tables = join(PROJECT_ROOT, 'prisma', 'migrations')
  const state = await prepareTables(process.env.DATABASE_URL ?? '', tables, {
    wanted: demo,
    load: () => step('loading the demo programme', loadDemo),
  })
  if (state !== 'loaded now') {
    await carryToWorks()
    await carryConcessions()
  }
  return state
}

/** Gives up waiting when the app is told to stop; what was going on is then cut off by the database's end. */
async function unlessStopped<Result>(stopping: AbortSignal, begin: () => Promise<Result>): Promise<Result> {
  stopping.throwIfAborted()
  const told = new Promise<never>((_, reject) =>
    stopping.addEventListener('abort', () => reject(stopping.reason as Error)),
  )
  const work = begin()
  for (const loser of [work, told]) loser.catch(() => undefined)
  return Promise.race([work, told])
}
