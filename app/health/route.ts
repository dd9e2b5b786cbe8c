import { openToAll } from '@/app/guard/open-to-all'
import { databaseAnswers } from '@/lib/queries/health'
import { log } from '@/lib/log/log'

export const dynamic = 'force-dynamic'

/** For load balancers: 200 while the app can reach its database, 503 while it cannot. */
export const GET = openToAll('A load balancer has no session, and nothing of any programme is told.', health)

async function health(): Promise<Response> {
  try {
    await databaseAnswers()
    return Response.json({ status: 'ok' })
  } catch (error) {
    log.error('The health check cannot reach the database.', { error })
    return Response.json({ status: 'no database' }, { status: 503 })
  }
}
