import { programmeForExport } from '@/app/programmes/[code]/trail/programme-for-export'
import { fileResponse } from '@/lib/exports/text-response'
import { trailEntries } from '@/lib/exports/trail-bundle'
import { csvLine } from '@/shared/trail/csv-cell'

/** The trail as a table for a spreadsheet; for proof, take the bundle. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ code: string }> },
): Promise<Response> {
  const found = await programmeForExport((await params).code)
  if ('answer' in found) return found.answer
  const { id, code } = found.view.state.programme
  return fileResponse(lines(id), `${code}-trail.csv`, 'text/csv')
}

async function* lines(programmeId: string): AsyncGenerator<string> {
  yield csvLine(['entry', 'at', 'by', 'command', 'what', 'hash'])
  for await (const entries of trailEntries(programmeId)) {
    yield entries
      .map(({ seq, at, actorName, command, payload, hash }) =>
        csvLine([seq, at, actorName, command, payload, hash]),
      )
      .join('')
  }
}
