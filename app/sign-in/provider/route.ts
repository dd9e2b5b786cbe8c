import { cookies, headers } from 'next/headers'
import { openToAll } from '@/app/guard/open-to-all'
import { isSameOrigin } from '@/app/same-origin'
import { placeWithin } from '@/app/sign-in/place-within'
import { startProviderSignIn } from '@/lib/auth/provider-sign-in'
import { settings } from '@/lib/settings/settings'

/** Sends the browser to the identity provider; a plain form is enough to ask for it. */
export const POST = openToAll('Here people come in.', startAtProvider)

async function startAtProvider(request: Request): Promise<Response> {
  if (!isSameOrigin(request)) return new Response('Sign in from this site.', { status: 403 })
  if (!settings().identityProvider) return new Response('There is no identity provider.', { status: 404 })
  const then = (await request.formData()).get('then')
  const { location, setCookies } = await startProviderSignIn(
    {
      headers: Object.fromEntries(await headers()),
      cookies: Object.fromEntries((await cookies()).getAll().map(({ name, value }) => [name, value])),
    },
    placeWithin(typeof then === 'string' ? then : ''),
  )
  const response = new Response(null, { status: 303, headers: { location, 'cache-control': 'no-store' } })
  for (const line of setCookies) response.headers.append('set-cookie', line)
  return response
}
