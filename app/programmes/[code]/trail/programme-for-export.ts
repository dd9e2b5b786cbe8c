import { signedIn } from '@/lib/auth/session'
import { readProgramme, type ProgrammeView } from '@/lib/queries/programme-reader'

/** The programme of an export's address, or the answer to give instead. */
export async function programmeForExport(
  code: string,
): Promise<{ view: ProgrammeView } | { answer: Response }> {
  const person = await signedIn()
  if (!person) return { answer: new Response('Sign in first.', { status: 401 }) }
  const read = await readProgramme(code, person)
  if (!read.found) return { answer: new Response('There is no such programme.', { status: 404 }) }
  if (!read.view) return { answer: new Response(read.refused, { status: 403 }) }
  return { view: read.view }
}
