import { sweepSessions } from '@/lib/auth/session-store'
import { sweepCounts } from '@/lib/auth/throttle'
import { log } from '@/lib/log/log'

/** Clears what says nothing any more: sessions that are over, and counts of failures long ago. */
export async function sweepSignIns(now = new Date()): Promise<void> {
  try {
    await sweepSessions(now)
    await sweepCounts(now)
  } catch (error) {
    log.error('Sessions that are over could not be cleared.', { error })
  }
}
