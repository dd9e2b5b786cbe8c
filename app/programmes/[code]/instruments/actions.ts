'use server'
import { gaugeAddress } from '@/app/addresses'
import { rowsFromForm } from '@/app/forms/column-value'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { STUDY_COLUMNS } from './study-columns'

/** All readings of a gauge study at once: all of them are kept, or none. */
export async function recordStudy(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, instrumentTag, study] = [text(form, 'programme'), text(form, 'tag'), text(form, 'study')]
  if (!study) {
    const says = 'Name the study.'
    return { message: says, fields: { study: says }, typed: typedIn(form) }
  }
  const rows = rowsFromForm(form, 'rows', STUDY_COLUMNS).map((row) => ({ ...row, study, instrumentTag }))
  return submit(
    'add-record',
    form,
    () => ({ programme, kind: 'gauge-reading', rows }),
    () => gaugeAddress(programme, instrumentTag),
  )
}
