import { typedIn, type FormState } from '@/app/forms/form-state'
import { unfitToSend } from '@/app/forms/submit'
import { withPartsNamed } from '@/lib/programme/works/listed-parts'
import { signedIn } from '@/lib/auth/session'
import { readProgramme } from '@/lib/queries/programme-reader'
import { revisionPreview } from '@/shared/gate/revision-preview'

/** What saving a value would change, judged on everything there is; nothing is stored. */
export async function previewRevision(
  programme: string,
  key: string,
  value: unknown,
  form: FormData,
): Promise<FormState> {
  const person = await signedIn()
  const typed = typedIn(form)
  const unfit = unfitToSend(person)
  if (!person || unfit) return { message: unfit ?? '', fields: {}, typed }
  const read = await readProgramme(programme, person)
  if (!read.found) return { message: 'There is no such programme.', fields: {}, typed }
  if (!read.view) return { message: read.refused, fields: {}, typed }
  const state = await withPartsNamed(read.view.state, key, value)
  const found = revisionPreview(state, read.view.judgement, key, value)
  return 'preview' in found ? { fields: {}, typed, preview: found.preview } : { ...found, typed }
}
