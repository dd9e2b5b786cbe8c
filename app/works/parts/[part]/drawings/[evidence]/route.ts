import { Readable } from 'node:stream'
import { addressPart } from '@/app/address-part'
import { guarded } from '@/app/guard/guarded'
import type { Rights } from '@/app/guard/rights'
import { installedStore } from '@/lib/evidence/installed-store'
import { safeHeaders } from '@/lib/evidence/safe-headers'
import { readStoredFile } from '@/lib/queries/stored-file'
import { readPart } from '@/lib/queries/works/parts'

type StoredFile = NonNullable<Awaited<ReturnType<typeof readStoredFile>>>

/** A drawing of a part, to everybody who is signed in. */
const readsDrawing: Rights<{ part: string; evidence: string }, StoredFile> = async (_person, params) => {
  const part = await readPart(addressPart(params.part))
  const file = part && (await readStoredFile(part.id, params.evidence))
  return file ? { right: file } : { status: 404, message: 'There is no such drawing of this part.' }
}

export const GET = guarded(readsDrawing, async ({ right: file }) => {
  const stream = await (await installedStore()).open(file.sha256)
  return new Response(Readable.toWeb(stream) as ReadableStream, { headers: safeHeaders(file, file.fileName) })
})
