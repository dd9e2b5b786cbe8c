import NextAuth from 'next-auth'
import { openToAll } from '@/app/guard/open-to-all'
import { authOptions } from '@/lib/auth/auth-options'
import type { Checked } from '@/lib/auth/check-password'
import { visitorFrom } from '@/lib/auth/visitor'

interface Place {
  params: Promise<{ nextauth: string[] }>
}

/** A password that was not looked at is answered by 429, with the seconds to wait (RFC 6585, section 4). */
const handler = openToAll(
  'Here people come in; what it tells of a session it tells to who holds it.',
  async (request: Request, place: Place): Promise<Response> => {
    let checked: Checked | undefined
    const options = authOptions(visitorFrom(request.headers), (now) => (checked = now))
    const answer = (await NextAuth(request as never, place as never, options)) as Response
    const unseen = checked as Checked | undefined
    if (!unseen || unseen.ok || unseen.retryAfterS === undefined) return answer
    return Response.json(
      { message: unseen.message },
      { status: 429, headers: { 'Retry-After': String(unseen.retryAfterS), 'Cache-Control': 'no-store' } },
    )
  },
)

export { handler as GET, handler as POST }
