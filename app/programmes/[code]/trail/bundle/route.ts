import { programmeForExport } from '@/app/programmes/[code]/trail/programme-for-export'
import { fileResponse } from '@/lib/exports/text-response'
import { bundleText } from '@/lib/exports/trail-bundle'

/** The whole trail as one file that the standalone verifier checks. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ code: string }> },
): Promise<Response> {
  const found = await programmeForExport((await params).code)
  if ('answer' in found) return found.answer
  const { programme } = found.view.state
  return fileResponse(
    bundleText(programme, new Date().toISOString()),
    `${programme.code}-trail.json`,
    'application/json',
  )
}
