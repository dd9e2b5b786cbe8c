import { guarded } from '@/app/guard/guarded'
import { readsTrails } from '@/app/guard/rights'
import { linesResponse } from '@/lib/exports/text-response'
import { auditSearchFrom, readableTrails } from '@/lib/queries/audit'
import { verifyAll } from '@/lib/trail/verify-all'

/** Every trail the person may read, verified one after the other; one JSON value a line. */
export const GET = guarded(readsTrails, async ({ request, person }) => {
  const { code } = auditSearchFrom(Object.fromEntries(new URL(request.url).searchParams))
  return linesResponse(verifyAll(await readableTrails(person, code)))
})
