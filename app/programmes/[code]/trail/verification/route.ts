import { programmeForExport } from '@/app/programmes/[code]/trail/programme-for-export'
import { linesResponse } from '@/lib/exports/text-response'
import { verifyStored } from '@/lib/trail/verify-stored'

/** The verification as it goes on: one JSON value a line, the verdict last. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ code: string }> },
): Promise<Response> {
  const found = await programmeForExport((await params).code)
  if ('answer' in found) return found.answer
  return linesResponse(verifyStored(found.view.state.programme.id))
}
