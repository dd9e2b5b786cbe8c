import { MS_PER_HOUR } from '@/shared/quantity/calendar'
import { setTimeout as wait } from 'node:timers/promises'
import type { Client } from 'pg'
import { whileAlone } from '@/lib/db/while-alone'
import { readerOver } from '@/lib/db/row-reader'
import { log } from '@/lib/log/log'
import { allTrails, type NamedTrail } from '@/lib/trail/all-trails'
import { outcomeOf, type TrailOutcome } from '@/lib/trail/trail-outcome'
import { verdictOnStored, type FilesSeen } from '@/lib/trail/verify-stored'

/** The number that instances lock on, so that one of them verifies and the others leave it alone. */
const NIGHTLY_LOCK = 72_707_371
/** A trail that was verified since is not due: an instance that starts again does not do the night's work twice. */
const FRESH_MS = 20 * MS_PER_HOUR
/** The hour of the server's own clock at which the installation is quietest. */
const NIGHT_HOUR = 2

/**
 * Verifies every trail that was not verified in the last twenty hours, notes what was found of each and
 * logs what is broken as an error. Does nothing while another instance is at it.
 */
export async function verifyInstalled(
  stopping: AbortSignal,
  now = Date.now,
): Promise<readonly TrailOutcome[]> {
  const outcomes = await whileAlone(NIGHTLY_LOCK, async (client) => {
    const due = await dueOf(client, await allTrails(readerOver(client)), new Date(now() - FRESH_MS))
    const seen: FilesSeen = new Map()
    const found: TrailOutcome[] = []
    for (const trail of due) {
      const outcome = outcomeOf(trail.code, await verdictOnStored(trail.id, seen, stopping))
      tell(outcome)
      await note(client, trail.id, outcome, new Date(now()))
      found.push(outcome)
    }
    return found
  })
  return outcomes ?? []
}

/** Verifies what is due now and then every night, until told to stop; what fails is logged, and the next night tries again. */
export async function verifyNightly(
  stopping: AbortSignal,
  verify: () => Promise<readonly TrailOutcome[]>,
  untilNext = (): number => msUntilNight(new Date()),
): Promise<void> {
  while (!stopping.aborted) {
    try {
      const outcomes = await verify()
      if (outcomes.length > 0)
        log.info('Trails were verified.', {
          trails: outcomes.length,
          broken: outcomes.filter(({ intact }) => !intact).length,
        })
    } catch (error) {
      if (!stopping.aborted) log.error('The trails could not be verified.', { error })
    }
    await wait(untilNext(), undefined, { signal: stopping, ref: false }).catch(() => undefined)
  }
}

/** How long it is until two in the night, by the server's own clock. */
export function msUntilNight(now: Date): number {
  const night = new Date(now)
  night.setHours(NIGHT_HOUR, 0, 0, 0)
  if (night <= now) night.setDate(night.getDate() + 1)
  return night.getTime() - now.getTime()
}

async function dueOf(client: Client, trails: readonly NamedTrail[], since: Date): Promise<NamedTrail[]> {
  const { rows } = await client.query<{ trailId: string }>(
    'SELECT "trailId" FROM "Verification" WHERE "at" > $1',
    [since],
  )
  const fresh = new Set(rows.map(({ trailId }) => trailId))
  return trails.filter(({ id }) => !fresh.has(id))
}

function tell({ code, intact, breaks, firstBreak, clockSteps }: TrailOutcome): void {
  if (!intact) log.error('A trail is broken.', { trail: code, breaks, first: firstBreak })
  if (clockSteps > 0) log.warn('Time runs backwards in a trail.', { trail: code, places: clockSteps })
}

async function note(client: Client, trailId: string, outcome: TrailOutcome, at: Date): Promise<void> {
  const { intact, entries, breaks, clockSteps, unhashedRows } = outcome
  await client.query(
    `INSERT INTO "Verification" ("trailId", "at", "intact", "entries", "breaks", "clockSteps", "unhashedRows")
     VALUES ($1, $2, $3, $4, $5, $6, $7)
     ON CONFLICT ("trailId") DO UPDATE SET "at" = EXCLUDED."at", "intact" = EXCLUDED."intact",
       "entries" = EXCLUDED."entries", "breaks" = EXCLUDED."breaks",
       "clockSteps" = EXCLUDED."clockSteps", "unhashedRows" = EXCLUDED."unhashedRows"`,
    [trailId, at, intact, entries, breaks, clockSteps, unhashedRows],
  )
}
