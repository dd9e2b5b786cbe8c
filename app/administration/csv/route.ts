import { guarded } from '@/app/guard/guarded'
import { readsInstallation } from '@/app/guard/rights'
import { trailsResponse } from '@/lib/exports/tables/trail-table'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

/** The installation's own trail as a table for a spreadsheet, CSV or, where asked for, XLSX. */
export const GET = guarded(readsInstallation, ({ request }) =>
  trailsResponse(
    [{ id: INSTALLATION_TRAIL, code: INSTALLATION_TRAIL }],
    'installation-trail',
    new URL(request.url).searchParams.get('as'),
  ),
)
