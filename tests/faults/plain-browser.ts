/* A browser without scripts, as far as tests need one: it signs in. */

/** The cookies of a session, as a `cookie` header. */
export async function signedInAt(
  base: string,
  { email, password }: { readonly email: string; readonly password: string },
): Promise<string> {
  const asked = await fetch(`${base}/api/auth/csrf`)
  const { csrfToken } = (await asked.json()) as { csrfToken: string }
  const before = cookiesOf(asked)
  const answer = await fetch(`${base}/api/auth/callback/credentials`, {
    method: 'POST',
    redirect: 'manual',
    headers: { cookie: before, 'content-type': 'application/x-www-form-urlencoded' },
    body: new URLSearchParams({ csrfToken, email, password }),
  })
  const after = cookiesOf(answer)
  if (!after.includes('session-token')) throw new Error(`Nobody could sign in at ${base} (${answer.status}).`)
  return `${before}; ${after}`
}

const cookiesOf = (response: Response): string =>
  response.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0] ?? '')
    .join('; ')
