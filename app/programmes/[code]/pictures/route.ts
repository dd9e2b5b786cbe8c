import { guarded, type LetIn } from '@/app/guard/guarded'
import { mayInProgramme } from '@/app/guard/rights'
import { placeAddress } from '@/app/place-address'
import { perform } from '@/lib/commands/perform'
import { installedStore } from '@/lib/evidence/installed-store'
import { receiveUpload } from '@/lib/evidence/receive-upload'
import { registerFile } from '@/lib/evidence/register-file'
import { sealUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { Refused } from '@/shared/refused'
import { placeOfPictured, type Pictured } from '@/shared/reviews/pictured'

/** Takes a picture of a joint or a nonconformity: streamed to the store, then attached through the door. */
export const POST = guarded(mayInProgramme('attach-picture'), attachPicture)

async function attachPicture({
  request,
  person: { personId },
  right: { code, state },
}: LetIn<{ code: string }, ProgrammeView>): Promise<Response> {
  const fields = new Map<string, string[]>()
  const field = (name: string) => fields.get(name)?.[0] ?? ''
  const back = () => placeAddress(code, placeOfPictured(picturedIn(field)))
  const refuse = (refused: string) => {
    const answer = { refused, kind: '', note: field('note') }
    const upload = sealUploadAnswer(answer, uploadSecret(), Date.now())
    return see(`${back()}?${new URLSearchParams({ upload })}#pictures`)
  }
  try {
    const { files } = await receiveUpload(request, await installedStore(), { files: 1 }, fields)
    const [file] = files
    if (!file) return refuse('Choose a picture.')
    await registerFile(file, { personId, programmeId: state.programme.id })
    const outcome = await perform(
      personId,
      'attach-picture',
      {
        programme: code,
        about: picturedIn(field),
        note: field('note'),
        sha256: file.sha256,
        fileName: file.fileName,
      },
      { key: field('key') },
    )
    return outcome.ok ? see(`${back()}#pictures`) : refuse(outcome.message)
  } catch (error) {
    if (error instanceof Refused) return refuse(error.message)
    throw error
  }
}

const picturedIn = (field: (name: string) => string): Pictured =>
  field('about') === 'joint'
    ? { kind: 'joint', assembly: field('assembly'), joint: field('joint') }
    : { kind: 'nonconformity', number: Number(field('number')) }

const see = (address: string): Response => new Response(null, { status: 303, headers: { location: address } })
