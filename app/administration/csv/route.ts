import { guarded } from '@/app/guard/guarded'
import { readsInstallation } from '@/app/guard/rights'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

/** The installation's own trail as a table for a spreadsheet. */
export const GET = guarded(readsInstallation, () =>
  fileResponse(
    trailCsv([{ id: INSTALLATION_TRAIL, code: INSTALLATION_TRAIL }]),
    'installation-trail.csv',
    'text/csv',
  ),
)
