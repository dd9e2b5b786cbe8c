import { auditReader } from '@/app/audit/reader'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'
import { auditSearchFrom, readableTrails } from '@/lib/queries/audit'

/** All entries of all trails the person may read, as one table. */
export async function GET(request: Request): Promise<Response> {
  const found = await auditReader()
  if ('answer' in found) return found.answer
  const { code } = auditSearchFrom(Object.fromEntries(new URL(request.url).searchParams))
  return fileResponse(trailCsv(await readableTrails(found.person, code)), 'trails.csv', 'text/csv')
}
