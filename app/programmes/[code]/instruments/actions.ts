'use server'
import { gaugeAddress } from '@/app/addresses'
import { rowsFromForm } from '@/app/forms/column-value'
import { formAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { Refused } from '@/shared/refused'
import { STUDY_COLUMNS } from './study-columns'

/** All readings of a gauge study at once: all of them are kept, or none. */
export const recordStudy = formAction('add-record', {
  own: {
    kind: () => 'gauge-reading',
    rows: (form) => {
      const [instrumentTag, study] = [text(form, 'tag'), text(form, 'study')]
      if (!study) throw new Refused('Name the study.', { study: 'Name the study.' })
      return rowsFromForm(form, 'rows', STUDY_COLUMNS).map((row) => ({ ...row, study, instrumentTag }))
    },
  },
  then: (_done, form) => gaugeAddress(text(form, 'programme'), text(form, 'tag')),
})
