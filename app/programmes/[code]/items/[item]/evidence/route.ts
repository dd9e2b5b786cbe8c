import { itemAddress, signInAddress } from '@/app/addresses'
import { isSameOrigin } from '@/app/same-origin'
import { signedIn } from '@/lib/auth/session'
import { perform } from '@/lib/commands/perform'
import { installedStore } from '@/lib/evidence/installed-store'
import { receiveUpload } from '@/lib/evidence/receive-upload'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { sealUploadAnswer } from '@/lib/evidence/upload-answer'
import { registerFile } from '@/lib/evidence/register-file'
import { readProgramme } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { Refused } from '@/shared/refused'

interface Place {
  params: Promise<{ code: string; item: string }>
}

/** Takes a file for an item: streamed to the store, then attached through the door. */
export async function POST(request: Request, { params }: Place): Promise<Response> {
  const { code, item } = await params
  const wantsJson = request.headers.get('accept')?.includes('application/json') ?? false
  const back = itemAddress(code, item)
  const fields = new Map<string, string[]>()
  const field = (name: string) => fields.get(name)?.[0] ?? ''
  const refuse = (says: string, status: number) => {
    if (wantsJson) return Response.json({ message: says }, { status })
    const answer = { refused: says, kind: field('kind'), note: field('note') }
    const upload = sealUploadAnswer(answer, uploadSecret(), Date.now())
    return see(`${back}?${new URLSearchParams({ upload })}#evidence`)
  }
  if (!isSameOrigin(request)) return refuse('The form came from another site.', 403)
  const person = await signedIn()
  if (!person)
    return wantsJson
      ? Response.json({ message: 'Your session has ended. Sign in again.' }, { status: 401 })
      : see(signInAddress(back))
  const read = await readProgramme(code, person)
  const refused = read.found
    ? read.view
      ? refusal('attach-evidence', read.view.actor)
      : read.refused
    : 'There is no such programme.'
  if (refused) return refuse(refused, 403)
  try {
    const upload = await receiveUpload(request, await installedStore(), { files: 1 }, fields)
    const [file] = upload.files
    if (!file) return refuse('Choose a file.', 400)
    await registerFile(file)
    const outcome = await perform(
      person.personId,
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
