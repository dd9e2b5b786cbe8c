import { itemAddress } from '@/app/addresses'
import { guarded, type LetIn } from '@/app/guard/guarded'
import { mayInProgramme } from '@/app/guard/rights'
import { perform } from '@/lib/commands/perform'
import { installedStore } from '@/lib/evidence/installed-store'
import { receiveUpload } from '@/lib/evidence/receive-upload'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { sealUploadAnswer } from '@/lib/evidence/upload-answer'
import { registerFile } from '@/lib/evidence/register-file'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { Refused } from '@/shared/refused'

/** Takes a file for an item: streamed to the store, then attached through the door. */
export const POST = guarded(mayInProgramme('attach-evidence'), attachFile)

async function attachFile({
  request,
  params: { item },
  person: { personId },
  right: { code, state },
}: LetIn<{ code: string; item: string }, ProgrammeView>): Promise<Response> {
  const wantsJson = request.headers.get('accept')?.includes('application/json') ?? false
  const back = itemAddress(code, item)
  const fields = new Map<string, string[]>()
  const field = (name: string) => fields.get(name)?.[0] ?? ''
  const refuse = (message: string, status: number) => {
    if (wantsJson) return Response.json({ message: message }, { status })
    const answer = { refused: message, kind: field('kind'), note: field('note') }
    const upload = sealUploadAnswer(answer, uploadSecret(), Date.now())
    return see(`${back}?${new URLSearchParams({ upload })}#evidence`)
  }
  try {
    const upload = await receiveUpload(request, await installedStore(), { files: 1 }, fields)
    const [file] = upload.files
    if (!file) return refuse('Choose a file.', 400)
    await registerFile(file, { personId, programmeId: state.programme.id })
    const outcome = await perform(
      personId,
      'attach-evidence',
      {
        programme: code,
        item,
        kind: field('kind'),
        note: field('note'),
        what: { sha256: file.sha256, fileName: file.fileName },
      },
      { key: field('key') },
    )
    if (!outcome.ok) return refuse(outcome.message, 409)
    return wantsJson ? Response.json({ address: `${back}#evidence` }) : see(`${back}#evidence`)
  } catch (error) {
    if (error instanceof Refused) return refuse(error.message, 400)
    throw error
  }
}

const see = (address: string): Response => new Response(null, { status: 303, headers: { location: address } })
