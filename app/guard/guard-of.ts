/** What stands before a route's handler: a session, a machine's token, or nothing, with the reason. */
export type Guard =
  { readonly by: 'session' } | { readonly by: 'token' } | { readonly by: 'nothing'; readonly because: string }

const GUARD = Symbol('guard')

/** The handler, marked with what stands before it, so that one exported without any can be found. */
export const marked = <Handler extends (...given: never[]) => unknown>(
  handler: Handler,
  guard: Guard,
): Handler => Object.assign(handler, { [GUARD]: guard })

/** What stands before a route's exported handler; undefined when it was written without a guard. */
export const guardOf = (handler: unknown): Guard | undefined =>
  typeof handler === 'function' ? (handler as { [GUARD]?: Guard })[GUARD] : undefined
