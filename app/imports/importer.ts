import { mayInProgramme } from '@/app/guard/rights'
import { unfitToSend } from '@/app/forms/submit'
import { signedIn, type SignedIn } from '@/lib/auth/session'
import type { FileReader } from '@/lib/evidence/reached-file'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { NameWithoutSubject } from '@/shared/commands/all-faces'

/** Who imports, into which programme: they may, which is decided before anything of a file is read. */
export interface Importer {
  readonly person: SignedIn
  readonly view: ProgrammeView
}

/** The person of this session as importer into a programme; or why they are none, in a sentence. */
export async function importerInto(
  code: string,
  command: NameWithoutSubject,
): Promise<Importer | { readonly message: string }> {
  const person = await signedIn()
  const unfit = unfitToSend(person)
  if (!person || unfit) return { message: unfit ?? '' }
  const may = await mayInProgramme(command)(person, { code })
  return 'right' in may ? { person, view: may.right } : { message: may.message }
}

/** Whose file it has to be. */
export const fileReaderOf = ({ person, view }: Importer): FileReader => ({
  personId: person.personId,
  trailId: view.state.programme.id,
})
