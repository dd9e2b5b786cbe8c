'use server'
import { gaugeAddress } from '@/app/addresses'
import { rowsFromForm } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { Refused } from '@/shared/refused'
import { STUDY_COLUMNS } from './study-columns'

/** All readings of a gauge study at once: all of them are kept, or none. */
export async function recordStudy(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, instrumentTag, study] = [text(form, 'programme'), text(form, 'tag'), text(form, 'study')]
  const toInput = () => {
    if (!study) throw new Refused('Name the study.', { study: 'Name the study.' })
    const rows = rowsFromForm(form, 'rows', STUDY_COLUMNS).map((row) => ({ ...row, study, instrumentTag }))
    return { programme, kind: 'gauge-reading', rows }
  }
  return submit('add-record', form, toInput, () => gaugeAddress(programme, instrumentTag))
}
