import { guarded } from '@/app/guard/guarded'
import { readsTrails } from '@/app/guard/rights'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'
import { auditSearchFrom, readableTrails } from '@/lib/queries/audit'

/** All entries of all trails the person may read, as one table. */
export const GET = guarded(readsTrails, async ({ request, person }) => {
  const { code } = auditSearchFrom(Object.fromEntries(new URL(request.url).searchParams))
  return fileResponse(trailCsv(await readableTrails(person, code)), 'trails.csv', 'text/csv')
})
