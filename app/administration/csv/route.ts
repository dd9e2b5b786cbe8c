import { installationRefusal } from '@/app/administration/reader'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

/** The installation's own trail as a table for a spreadsheet. */
export async function GET(): Promise<Response> {
  return (
    (await installationRefusal()) ??
    fileResponse(
      trailCsv([{ id: INSTALLATION_TRAIL, code: INSTALLATION_TRAIL }]),
      'installation-trail.csv',
      'text/csv',
    )
  )
}
