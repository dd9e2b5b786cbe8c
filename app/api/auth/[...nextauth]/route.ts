import NextAuth from 'next-auth'
import { authOptions } from '@/lib/auth/auth-options'

interface Place {
  params: Promise<{ nextauth: string[] }>
}

const handler = (request: Request, place: Place): Promise<Response> =>
  NextAuth(request as never, place as never, authOptions())

export { handler as GET, handler as POST }
