import { Readable } from 'node:stream'
import { guarded } from '@/app/guard/guarded'
import { readsProgramme, type Rights } from '@/app/guard/rights'
import { installedStore } from '@/lib/evidence/installed-store'
import { safeHeaders } from '@/lib/evidence/safe-headers'
import { readStoredFile } from '@/lib/queries/stored-file'

type StoredFile = NonNullable<Awaited<ReturnType<typeof readStoredFile>>>

/** A file through the evidence that names it, to those who may read the programme. */
const readsFile: Rights<{ code: string; evidence: string }, StoredFile> = async (person, params) => {
  const read = await readsProgramme(person, params)
  if (!('right' in read)) return read
  const file = await readStoredFile(read.right.state.programme.id, params.evidence)
  return file ? { right: file } : { status: 404, message: 'There is no such file in this programme.' }
}

export const GET = guarded(readsFile, async ({ right: file }) => {
  const stream = await (await installedStore()).open(file.sha256)
  return new Response(Readable.toWeb(stream) as ReadableStream, { headers: safeHeaders(file, file.fileName) })
})
