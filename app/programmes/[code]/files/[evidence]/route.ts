import { Readable } from 'node:stream'
import { signedIn } from '@/lib/auth/session'
import { installedStore } from '@/lib/evidence/installed-store'
import { safeHeaders } from '@/lib/evidence/safe-headers'
import { readStoredFile } from '@/lib/queries/stored-file'
import { readProgramme } from '@/lib/queries/programme-reader'

interface Place {
  params: Promise<{ code: string; evidence: string }>
}

/** A file that is evidence in this programme, to those who may read the programme. */
export async function GET(_request: Request, { params }: Place): Promise<Response> {
  const { code, evidence } = await params
  const person = await signedIn()
  if (!person) return new Response('Sign in first.', { status: 401 })
  const read = await readProgramme(code, person)
  if (!read.found || !read.view)
    return new Response(read.found ? read.refused : 'There is no such programme.', {
      status: read.found ? 403 : 404,
    })
  const file = await readStoredFile(read.view.state.programme.id, evidence)
  if (!file) return new Response('There is no such file in this programme.', { status: 404 })
  const stream = await (await installedStore()).open(file.sha256)
  return new Response(Readable.toWeb(stream) as ReadableStream, { headers: safeHeaders(file, file.fileName) })
}
