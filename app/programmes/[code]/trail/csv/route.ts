import { guarded } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'

/** The trail as a table for a spreadsheet; for proof, take the bundle. */
export const GET = guarded(readsProgramme, ({ right: view }) => {
  const { id, code } = view.state.programme
  return fileResponse(trailCsv([{ id, code }]), `${code}-trail.csv`, 'text/csv')
})
