import { marked } from '@/app/guard/guard-of'
import { hashOfToken } from '@/lib/auth/secret-token'
import { visitorFrom } from '@/lib/auth/visitor'
import { callRate } from '@/lib/machines/call-rate'
import { calendarOwner } from '@/lib/queries/calendar-owner'
import type { DeskOwner } from '@/lib/queries/desk'

const waitOf = callRate(Date.now)

/**
 * A route handler for calendar programs, which bring no session: let in by the secret in the address, not too often
 * for one secret or from one origin. An address that is unknown, or was stopped, is not there.
 */
export const guardedByAddress = (handle: (request: Request, owner: DeskOwner) => Promise<Response>) =>
  marked(
    async (request: Request, place: { params: Promise<{ token: string }> }): Promise<Response> => {
      const tokenHash = hashOfToken((await place.params).token)
      const counted = [`origin ${visitorFrom(request.headers).origin}`, ...(tokenHash ? [tokenHash] : [])]
      const wait = Math.max(...counted.map(waitOf))
      if (wait > 0)
        return refused(429, `Too many calls: wait ${wait} seconds.`, { 'retry-after': String(wait) })
      const owner = tokenHash ? await calendarOwner(tokenHash) : undefined
      return owner ? handle(request, owner) : refused(404, 'There is no calendar here.')
    },
    { by: 'token' },
  )

const refused = (status: number, message: string, headers: Record<string, string> = {}): Response =>
  new Response(`${message}\n`, {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store', ...headers },
  })
