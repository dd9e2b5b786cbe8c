import { auditReader } from '@/app/audit/reader'
import { linesResponse } from '@/lib/exports/text-response'
import { auditSearchFrom, readableTrails } from '@/lib/queries/audit'
import { verifyAll } from '@/lib/trail/verify-all'

/** Every trail the person may read, verified one after the other; one JSON value a line. */
export async function GET(request: Request): Promise<Response> {
  const found = await auditReader()
  if ('answer' in found) return found.answer
  const { code } = auditSearchFrom(Object.fromEntries(new URL(request.url).searchParams))
  return linesResponse(verifyAll(await readableTrails(found.person, code)))
}
