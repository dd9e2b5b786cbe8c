/** Why a call is not taken, and where a person could mend that. */
export interface NotLetIn {
  readonly status: 401 | 403 | 404
  readonly message: string
  /** The page a browser is led to; without one it is told the sentence. */
  readonly goTo?: string
}

/** The refusal as the caller can use it: scripts get JSON or text with the status, a browser is led on where it can go on. */
export function refusedAnswer(request: Request, { status, message, goTo }: NotLetIn): Response {
  const accepts = request.headers.get('accept') ?? ''
  const headers = { 'cache-control': 'no-store' }
  if (accepts.includes('application/json')) return Response.json({ message: message }, { status, headers })
  if (goTo && accepts.includes('text/html'))
    return new Response(null, { status: 303, headers: { ...headers, location: goTo } })
  return new Response(message, { status, headers })
}
