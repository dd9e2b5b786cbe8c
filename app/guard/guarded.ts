import { marked } from '@/app/guard/guard-of'
import { personLetIn } from '@/app/guard/person-let-in'
import { refusedAnswer } from '@/app/guard/refused-answer'
import type { Rights } from '@/app/guard/rights'
import { isSameOrigin } from '@/app/same-origin'
import type { SignedIn } from '@/lib/auth/session'

/** A call that was let in: by whom, and what they may have. */
export interface LetIn<Params, Right> {
  readonly request: Request
  readonly params: Params
  readonly person: SignedIn
  readonly right: Right
}

const ONLY_READS = new Set(['GET', 'HEAD'])

/**
 * A route handler for people. Before anything of the request is read: a form comes from this site, there is a
 * session, it does not rest on a one-time password, and the person has the right.
 */
export const guarded = <Params, Right>(
  rights: Rights<Params, Right>,
  handle: (call: LetIn<Params, Right>) => Response | Promise<Response>,
) =>
  marked(
    async (request: Request, place: { params: Promise<Params> }): Promise<Response> => {
      if (!ONLY_READS.has(request.method) && !isSameOrigin(request))
        return refusedAnswer(request, { status: 403, message: 'The form came from another site.' })
      const came = await personLetIn(pageOf(request))
      if (!('person' in came)) return refusedAnswer(request, came)
      const params = await place.params
      const decided = await rights(came.person, params)
      if (!('right' in decided)) return refusedAnswer(request, decided)
      return handle({ request, params, person: came.person, right: decided.right })
    },
    { by: 'session' },
  )

/** The page to come back to after a sign-in: what was asked for, or where the form was filled in. */
function pageOf(request: Request): string | undefined {
  const address = ONLY_READS.has(request.method) ? request.url : (request.headers.get('referer') ?? '')
  if (!URL.canParse(address)) return undefined
  const { pathname, search } = new URL(address)
  return `${pathname}${search}`
}
