import { problem } from '@/app/api/problem'
import { marked } from '@/app/guard/guard-of'
import { callRate } from '@/lib/machines/call-rate'
import { tokenHashFrom } from '@/lib/machines/machine-token'
import { machineBehind, type MachineBehind } from '@/lib/queries/machine-tokens'

const waitOf = callRate(Date.now)

/** A route handler for machines: let in by the token they were given, not too often, before the call is read. */
export const guardedByToken = (handle: (request: Request, machine: MachineBehind) => Promise<Response>) =>
  marked(
    async (request: Request): Promise<Response> => {
      const tokenHash = tokenHashFrom(request.headers.get('authorization'))
      if (!tokenHash) return unknownToken()
      const wait = waitOf(tokenHash)
      if (wait > 0)
        return problem(429, `Too many calls: wait ${wait} seconds.`, {
          headers: { 'retry-after': String(wait) },
        })
      const machine = await machineBehind(tokenHash)
      return machine ? handle(request, machine) : unknownToken()
    },
    { by: 'token' },
  )

const unknownToken = (): Response =>
  problem(401, 'The token is missing, unknown or stopped.', { headers: { 'www-authenticate': 'Bearer' } })
