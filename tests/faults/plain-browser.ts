/* A browser without scripts, as far as tests need one: it signs in, and sends a form as it stands on a page. */

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

/** The hidden fields of the form of that name, as a page has them. */
export function hiddenFieldsOf(page: string, form: string): Readonly<Record<string, string>> {
  const from = page
    .split('<form')
    .find((part) => part.slice(0, part.indexOf('>')).includes(`aria-label="${form}"`))
  if (!from) throw new Error(`The page has no form “${form}”.`)
  const fields = [...from.slice(0, from.indexOf('</form>')).matchAll(/<input type="hidden"[^>]*>/g)]
  return Object.fromEntries(
    fields.map(([field]) => [attributeOf(field, 'name'), attributeOf(field, 'value')]),
  )
}

const attributeOf = (tag: string, name: string): string =>
  (new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? '')
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
