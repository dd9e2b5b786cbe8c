/** Called by the framework once, before the server takes its first request. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return
  const { noteEveryPeer } = await import('@/lib/auth/peer-address')
  noteEveryPeer()
  const { answerOddRequests } = await import('@/app/guard/odd-requests')
  answerOddRequests()
}
