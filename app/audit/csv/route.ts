import { guarded } from '@/app/guard/guarded'
import { readsTrails } from '@/app/guard/rights'
import { trailsResponse } from '@/lib/exports/tables/trail-table'
import { auditSearchFrom, readableTrails } from '@/lib/queries/audit'

/** All entries of all trails the person may read as one table, CSV or, where asked for, XLSX. */
export const GET = guarded(readsTrails, async ({ request, person }) => {
  const asked = new URL(request.url).searchParams
  const { code } = auditSearchFrom(Object.fromEntries(asked))
  return trailsResponse(await readableTrails(person, code), 'trails', asked.get('as'))
})
