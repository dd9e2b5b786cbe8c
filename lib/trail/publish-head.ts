import { createHmac } from 'node:crypto'
import { appendFile } from 'node:fs/promises'
import { log } from '@/lib/log/log'
import { settings } from '@/lib/settings/settings'
import type { TrailEntry } from '@/shared/trail/entry'

const LONGEST_WAIT_MS = 5_000

/**
 * Lets the newest hash leave the database, where the installation named a file
 * or a web hook: only a copy elsewhere can show a tail cut off or a chain
 * written anew. A place that does not answer is logged, never the person's problem.
 */
export async function publishHead({ trailId, seq, at, hash }: TrailEntry): Promise<void> {
  const { file, webhook } = settings().trailHeads
  const line = JSON.stringify({ trailId, seq, at, hash })
  if (file) {
    await appendFile(file, `${line}\n`, { mode: 0o600 }).catch((error: unknown) =>
      log.error('The newest hash could not be written to LIQUIDUS_HEAD_FILE.', { error }),
    )
  }
  if (webhook) void post(webhook, line, `${trailId}.${seq}`)
}

/** Signed as the Standard Webhooks convention has it: HMAC-SHA-256 over id, time and body. */
async function post(
  { url, secret }: { url: string; secret: string | undefined },
  body: string,
  id: string,
): Promise<void> {
  const timestamp = String(Math.floor(Date.now() / 1000))
  const signature =
    secret && createHmac('sha256', secret).update(`${id}.${timestamp}.${body}`).digest('base64')
  try {
    const response = await fetch(url, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        'webhook-id': id,
        'webhook-timestamp': timestamp,
        ...(signature ? { 'webhook-signature': `v1,${signature}` } : {}),
      },
      body,
      signal: AbortSignal.timeout(LONGEST_WAIT_MS),
    })
    if (!response.ok) log.error('LIQUIDUS_HEAD_WEBHOOK refused the newest hash.', { status: response.status })
  } catch (error) {
    log.error('LIQUIDUS_HEAD_WEBHOOK does not answer.', { error })
  }
}
