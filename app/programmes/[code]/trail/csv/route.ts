import { guarded } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { trailTable } from '@/lib/exports/tables/trail-table'
import { tableResponse } from '@/lib/exports/tables/table-response'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'

/** The trail as a table for a spreadsheet, CSV or, where asked for, XLSX; for proof, take the bundle. */
export const GET = guarded(readsProgramme, async ({ request, right: view }) => {
  const { id, code } = view.state.programme
  if (new URL(request.url).searchParams.get('as') === 'xlsx')
    return tableResponse(await trailTable(id, `${code}-trail`), 'xlsx')
  return fileResponse(trailCsv([{ id, code }]), `${code}-trail.csv`, 'text/csv')
})
