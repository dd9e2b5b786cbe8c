import { openToAll } from '@/app/guard/open-to-all'
import { log } from '@/lib/log/log'
import { databaseAnswers, littleRoom } from '@/lib/queries/health'

export const dynamic = 'force-dynamic'

/** For load balancers: 200 while the app can reach its database and has room on its disk, 503 while it has not. */
export const GET = openToAll('A load balancer has no session, and nothing of any programme is told.', health)

async function health(): Promise<Response> {
  try {
    const [message] = await Promise.all([littleRoom(), databaseAnswers()])
    if (message === undefined) return Response.json({ status: 'ok' })
    log.error(message)
    return Response.json({ status: 'little room', message }, { status: 503 })
  } catch (error) {
    log.error('The health check cannot reach the database or the disk.', { error })
    const message = 'The database or the disk of the data folder does not answer.'
    return Response.json({ status: 'no answer', message }, { status: 503 })
  }
}
