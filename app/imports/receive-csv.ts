import { signInAddress } from '@/app/addresses'
import { isSameOrigin } from '@/app/same-origin'
import { signedIn } from '@/lib/auth/session'
import { installedStore } from '@/lib/evidence/installed-store'
import { receiveUpload } from '@/lib/evidence/receive-upload'
import { registerFile } from '@/lib/evidence/register-file'
import { readProgramme } from '@/lib/queries/programme-reader'
import { refusal, type CommandName } from '@/shared/policy'
import { Refused } from '@/shared/refused'

/**
 * Takes a CSV file into the store and answers with the address of its preview.
 * Nothing refers to the file until the import is confirmed there.
 */
export async function receiveCsv(
  request: Request,
  code: string,
  command: CommandName,
  back: string,
  preview: (sha256: string) => string,
): Promise<Response> {
  const wantsJson = request.headers.get('accept')?.includes('application/json') ?? false
  const refuse = (says: string, status: number) =>
    wantsJson
      ? Response.json({ message: says }, { status })
      : see(`${back}${back.includes('?') ? '&' : '?'}${new URLSearchParams({ refused: says })}`)
  if (!isSameOrigin(request)) return refuse('The form came from another site.', 403)
  const person = await signedIn()
  if (!person)
    return wantsJson ? refuse('Your session has ended. Sign in again.', 401) : see(signInAddress(back))
  const read = await readProgramme(code, person)
  const refused = read.found
    ? read.view
      ? refusal(command, read.view.actor)
      : read.refused
    : 'There is no such programme.'
  if (refused) return refuse(refused, 403)
  try {
    const { files } = await receiveUpload(request, await installedStore(), { files: 1 })
    const [file] = files
    if (!file) return refuse('Choose a CSV file.', 400)
    if (!/^text\//.test(file.mediaType)) return refuse(`${file.fileName} is no CSV file.`, 400)
    await registerFile(file)
    const address = preview(file.sha256)
    return wantsJson ? Response.json({ address }) : see(address)
  } catch (error) {
    if (error instanceof Refused) return refuse(error.message, 400)
    throw error
  }
}

const see = (address: string): Response => new Response(null, { status: 303, headers: { location: address } })
