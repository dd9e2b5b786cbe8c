import type { Outcome } from '@/lib/commands/outcome'
import { installedStore } from '@/lib/evidence/installed-store'
import { receiveUpload } from '@/lib/evidence/receive-upload'
import { registerFile } from '@/lib/evidence/register-file'
import { sealUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { Refused } from '@/shared/refused'

interface Taking {
  readonly request: Request
  readonly personId: string
  /** The trail of the programme, or of what of the works, that it is sent for. */
  readonly trailId: string
  /** Where the form is, and the part of that page that shows what was taken. */
  readonly back: (field: (name: string) => string) => string
  readonly part: string
  /** What is done with the file through the door. */
  readonly then: (
    file: { readonly sha256: string; readonly fileName: string },
    field: (name: string) => string,
  ) => Promise<Outcome>
}

/** Takes one file from a form: streamed to the store, then named through the door. Answers as the form asked. */
export async function takeFile({ request, personId, trailId, back, part, then }: Taking): Promise<Response> {
  const wantsJson = request.headers.get('accept')?.includes('application/json') ?? false
  const fields = new Map<string, string[]>()
  const field = (name: string) => fields.get(name)?.[0] ?? ''
  const refuse = (message: string, status: number) => {
    if (wantsJson) return Response.json({ message: message }, { status })
    const answer = { refused: message, kind: field('kind'), note: field('note') }
    const upload = sealUploadAnswer(answer, uploadSecret(), Date.now())
    return see(`${back(field)}?${new URLSearchParams({ upload })}#${part}`)
  }
  try {
    const upload = await receiveUpload(request, await installedStore(), { files: 1 }, fields)
    const [file] = upload.files
    if (!file) return refuse('Choose a file.', 400)
    await registerFile(file, { personId, trailId })
    const outcome = await then(file, field)
    if (!outcome.ok) return refuse(outcome.message, 409)
    return wantsJson ? Response.json({ address: `${back(field)}#${part}` }) : see(`${back(field)}#${part}`)
  } catch (error) {
    if (error instanceof Refused) return refuse(error.message, 400)
    throw error
  }
}

const see = (address: string): Response => new Response(null, { status: 303, headers: { location: address } })
