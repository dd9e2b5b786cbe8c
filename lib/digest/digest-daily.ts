import { fromDate } from '@internationalized/date'
import { setTimeout as wait } from 'node:timers/promises'
import type { DigestRound } from '@/lib/digest/send-digests'
import { log } from '@/lib/log/log'
import type { MailSettings } from '@/lib/settings/settings'

/** How often it is looked whether somebody is due: a round in which nobody is asks one thing of the database. */
const EVERY_MS = 600_000

/** From the works' hour on, sends to whoever was not told today, until told to stop. What fails is tried again. */
export async function digestDaily(
  stopping: AbortSignal,
  send: () => Promise<DigestRound>,
  { timeZone, digestHour }: Pick<MailSettings, 'timeZone' | 'digestHour'>,
  { everyMs = EVERY_MS, now = () => new Date() } = {},
): Promise<void> {
  while (!stopping.aborted) {
    if (fromDate(now(), timeZone).hour >= digestHour) {
      try {
        const { sent, failed } = await send()
        if (sent + failed > 0) log.info('Daily mails were sent.', { sent, failed })
      } catch (error) {
        if (!stopping.aborted) log.error('The daily mails could not be sent.', { error })
      }
    }
    await wait(everyMs, undefined, { signal: stopping, ref: false }).catch(() => undefined)
  }
}
