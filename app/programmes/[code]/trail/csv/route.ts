import { programmeForExport } from '@/app/programmes/[code]/trail/programme-for-export'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'

/** The trail as a table for a spreadsheet; for proof, take the bundle. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ code: string }> },
): Promise<Response> {
  const found = await programmeForExport((await params).code)
  if ('answer' in found) return found.answer
  const { id, code } = found.view.state.programme
  return fileResponse(trailCsv([{ id, code }]), `${code}-trail.csv`, 'text/csv')
}
