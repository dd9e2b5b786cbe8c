import { guarded } from '@/app/guard/guarded'
import { readsTheWorks } from '@/app/guard/rights'
import { trainingTable } from '@/lib/exports/tables/installation-tables'
import { tableResponse } from '@/lib/exports/tables/table-response'

/** Everybody's training for a spreadsheet: `as` csv or xlsx. */
export const GET = guarded(readsTheWorks, async ({ request }) =>
  tableResponse(await trainingTable(), new URL(request.url).searchParams.get('as')),
)
