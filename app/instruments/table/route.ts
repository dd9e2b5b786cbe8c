import { guarded } from '@/app/guard/guarded'
import { readsTheWorks } from '@/app/guard/rights'
import { instrumentsTable } from '@/lib/exports/tables/installation-tables'
import { tableResponse } from '@/lib/exports/tables/table-response'

/** The register of instruments for a spreadsheet: `as` csv or xlsx. */
export const GET = guarded(readsTheWorks, async ({ request }) =>
  tableResponse(await instrumentsTable(), new URL(request.url).searchParams.get('as')),
)
