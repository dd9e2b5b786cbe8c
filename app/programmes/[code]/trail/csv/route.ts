import { guarded } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { trailsResponse } from '@/lib/exports/tables/trail-table'

/** The trail as a table for a spreadsheet, CSV or, where asked for, XLSX; for proof, take the bundle. */
export const GET = guarded(readsProgramme, ({ request, right: view }) => {
  const { id, code } = view.state.programme
  return trailsResponse([{ id, code }], `${code}-trail`, new URL(request.url).searchParams.get('as'))
})
