import { typedIn, type FormState } from '@/app/forms/form-state'
import { unfitToSend } from '@/app/forms/submit'
import { signedIn } from '@/lib/auth/session'
import { readProgramme } from '@/lib/queries/programme-reader'
import { changePreview } from '@/shared/gate/change-preview'
import { findParameter } from '@/shared/catalogue/standard-plan'

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
  const parameter = findParameter(key)
  if (!read.found || !parameter)
    return { message: 'There is no such programme or parameter.', fields: {}, typed }
  if (!read.view) return { message: read.refused, fields: {}, typed }
  const parsed = parameter.schema.safeParse(value)
  if (!parsed.success) {
    const fields = Object.fromEntries(
      parsed.error.issues.map(({ path, message }) => [['value', ...path.map(String)].join('.'), message]),
    )
    return { message: Object.values(fields)[0] ?? 'The value cannot be read.', fields, typed }
  }
  const { state, judgement } = read.view
  const clean: unknown = JSON.parse(JSON.stringify(parsed.data))
  if (JSON.stringify(state.facts.values.get(key)) === JSON.stringify(clean))
    return { message: 'This is the value it has already; saving it would change nothing.', fields: {}, typed }
  return { fields: {}, typed, preview: changePreview(state, judgement, key, clean) }
}
