import { Readable } from 'node:stream'
import { guarded } from '@/app/guard/guarded'
import type { Rights } from '@/app/guard/rights'
import { installedStore } from '@/lib/evidence/installed-store'
import { safeHeaders } from '@/lib/evidence/safe-headers'
import { peopleTrail } from '@/lib/queries/people-of-the-works'
import { readStoredFile } from '@/lib/queries/stored-file'

type StoredFile = NonNullable<Awaited<ReturnType<typeof readStoredFile>>>

/** A certificate, to everybody who is signed in, as the page that names it is. */
const readsCertificate: Rights<{ evidence: string }, StoredFile> = async (_person, { evidence }) => {
  const file = await readStoredFile(await peopleTrail(), evidence)
  return file ? { right: file } : { status: 404, message: 'There is no such certificate.' }
}

export const GET = guarded(readsCertificate, async ({ right: file }) => {
  const stream = await (await installedStore()).open(file.sha256)
  return new Response(Readable.toWeb(stream) as ReadableStream, { headers: safeHeaders(file, file.fileName) })
})
