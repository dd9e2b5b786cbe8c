import { guarded } from '@/app/guard/guarded'
import type { Rights } from '@/app/guard/rights'
import { instrumentsTable } from '@/lib/exports/tables/installation-tables'
import { tableResponse } from '@/lib/exports/tables/table-response'

/** The register is for everybody who is signed in, as its page is. */
const signedIn: Rights<unknown, undefined> = async () => ({ right: undefined })

/** The register of instruments for a spreadsheet: `as` csv or xlsx. */
export const GET = guarded(signedIn, async ({ request }) =>
  tableResponse(await instrumentsTable(), new URL(request.url).searchParams.get('as')),
)
