const TITLES: Readonly<Record<number, string>> = {
  400: 'The call cannot be read',
  401: 'Not let in',
  404: 'No such log',
  409: 'Refused',
  413: 'Too large',
  415: 'Not JSON',
  429: 'Too many calls',
}

/** A refusal of a machine's call in the form of RFC 9457. */
export function problem(
  status: number,
  detail: string,
  more: { problems?: Readonly<Record<string, string>> | undefined; headers?: Record<string, string> } = {},
): Response {
  const { problems, headers } = more
  return Response.json(
    { title: TITLES[status], status, detail, ...(problems && { problems }) },
    { status, headers: { 'content-type': 'application/problem+json', ...headers } },
  )
}
