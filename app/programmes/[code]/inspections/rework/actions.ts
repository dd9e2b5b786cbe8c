'use server'
import { reworkAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import { formAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

/** Rework, or another look at a reworked joint; the page of what still waits follows. */
export const recordHere = formAction('add-record', {
  own: {
    rows: (form) => {
      const { columns }: RecordKind =
        text(form, 'kind') === 'rework' ? RECORD_KINDS.rework : RECORD_KINDS['re-inspection']
      return [rowFromForm(form, 'rows.0', columns)]
    },
  },
  then: (_done, form) => `${reworkAddress(text(form, 'programme'))}#waiting`,
})
