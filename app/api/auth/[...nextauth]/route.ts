import NextAuth from 'next-auth'
import { openToAll } from '@/app/guard/open-to-all'
import { authOptions } from '@/lib/auth/auth-options'

interface Place {
  params: Promise<{ nextauth: string[] }>
}

const handler = openToAll(
  'Here people come in; what it tells of a session it tells to who holds it.',
  (request: Request, place: Place): Promise<Response> =>
    NextAuth(request as never, place as never, authOptions()),
)

export { handler as GET, handler as POST }
