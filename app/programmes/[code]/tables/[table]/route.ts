import { guarded } from '@/app/guard/guarded'
import { readsProgramme, type Rights } from '@/app/guard/rights'
import { programmeTable } from '@/lib/exports/tables/programme-tables'
import { tableResponse } from '@/lib/exports/tables/table-response'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

const reads: Rights<{ code: string; table: string }, ProgrammeView> = (person, params) =>
  readsProgramme(person, params)

/** One table of the programme for a spreadsheet: `as` csv or xlsx, `of` which one where there are several. */
export const GET = guarded(reads, async ({ request, params, right: view }) => {
  const asked = new URL(request.url).searchParams
  const table = await programmeTable(view, params.table, asked.get('of') ?? '')
  if (!table) return new Response('There is no such table.', { status: 404 })
  return tableResponse({ ...table, name: `${view.code}-${table.name}` }, asked.get('as'))
})
