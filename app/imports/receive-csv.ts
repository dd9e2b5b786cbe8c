import type { LetIn } from '@/app/guard/guarded'
import { CONTENT_KINDS } from '@/lib/evidence/content-kind'
import { installedStore } from '@/lib/evidence/installed-store'
import { receiveUpload } from '@/lib/evidence/receive-upload'
import { registerFile } from '@/lib/evidence/register-file'
import { Refused } from '@/shared/refused'

/**
 * Takes a CSV file or a workbook into the store and answers with the address of its preview.
 * Nothing refers to the file until the import is confirmed there; until then it is its sender's alone.
 */
export async function receiveCsv(
  { request, person: { personId } }: Pick<LetIn<unknown, unknown>, 'request' | 'person'>,
  trailId: string,
  back: string,
  preview: (sha256: string) => string,
): Promise<Response> {
  const wantsJson = request.headers.get('accept')?.includes('application/json') ?? false
  const refuse = (message: string) =>
    wantsJson
      ? Response.json({ message: message }, { status: 400 })
      : see(`${back}${back.includes('?') ? '&' : '?'}${new URLSearchParams({ refused: message })}`)
  try {
    const { files } = await receiveUpload(request, await installedStore(), { files: 1 })
    const [file] = files
    if (!file) return refuse('Choose a CSV or XLSX file.')
    if (!/^text\//.test(file.mediaType) && file.mediaType !== CONTENT_KINDS.xlsx.mediaType)
      return refuse(`${file.fileName} is neither a CSV file nor an XLSX workbook.`)
    await registerFile(file, { personId, trailId })
    const address = preview(file.sha256)
    return wantsJson ? Response.json({ address }) : see(address)
  } catch (error) {
    if (error instanceof Refused) return refuse(error.message)
    throw error
  }
}

const see = (address: string): Response => new Response(null, { status: 303, headers: { location: address } })
