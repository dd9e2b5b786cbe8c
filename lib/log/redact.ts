const SECRET_NAME = /pass(word|phrase)?$|secret|token|cookie|authorization|api-?key|private-?key|session/i
const CREDENTIALS_IN_ADDRESS = /(\b[a-z][a-z0-9+.-]*:\/\/[^\s:/@]*):[^\s/@]+@/gi
const HIDDEN = '[hidden]'
const DEEPEST = 6

/**
 * A copy fit for a log: values under a secret's name are hidden, and so are passwords inside addresses.
 * Errors become their name, message, stack and cause. What lies deeper than six levels is left out.
 */
export function redact(value: unknown, depth = 0): unknown {
  if (typeof value === 'string') return value.replace(CREDENTIALS_IN_ADDRESS, `$1:${HIDDEN}@`)
  if (typeof value === 'bigint') return value.toString()
  if (value === null || typeof value !== 'object') return value
  if (depth >= DEEPEST) return '[deeper]'
  if (value instanceof Error) return redactError(value, depth)
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? 'invalid date' : value.toISOString()
  if (Array.isArray(value)) return value.map((each) => redact(each, depth + 1))
  return Object.fromEntries(
    Object.entries(value).map(([name, each]) => [
      name,
      SECRET_NAME.test(name) ? HIDDEN : redact(each, depth + 1),
    ]),
  )
}

function redactError(error: Error, depth: number) {
  const { name, message, stack, cause, ...rest } = error as Error & Record<string, unknown>
  return {
    name,
    message: redact(message),
    stack: redact(stack),
    ...(cause === undefined ? {} : { cause: redact(cause, depth + 1) }),
    ...(redact(rest, depth + 1) as object),
  }
}
