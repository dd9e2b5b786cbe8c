import { programmeForExport } from '@/app/programmes/[code]/trail/programme-for-export'
import { streamOf } from '@/lib/exports/text-response'
import { verifyStored } from '@/lib/trail/verify-stored'

/** The verification as it goes on: one JSON value a line, the verdict last. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ code: string }> },
): Promise<Response> {
  const found = await programmeForExport((await params).code)
  if ('answer' in found) return found.answer
  return new Response(streamOf(lines(found.view.state.programme.id)), {
    headers: {
      'content-type': 'application/x-ndjson',
      'cache-control': 'private, no-store',
      'x-accel-buffering': 'no',
    },
  })
}

async function* lines(programmeId: string): AsyncGenerator<string> {
  for await (const step of verifyStored(programmeId)) yield `${JSON.stringify(step)}\n`
}
