'use server'
import { rowFromForm, rowsFromForm } from '@/app/forms/column-value'
import { previewedAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'

/** One record, its boxes those of its kind's columns; or as many as a table of them holds. */
export const addRecord = previewedAction('add-record', {
  own: {
    rows: (form) => {
      const kind = text(form, 'kind')
      if (!Object.hasOwn(RECORD_KINDS, kind)) return []
      const { columns }: RecordKind = RECORD_KINDS[kind as RecordKindKey]
      return text(form, 'many') ? rowsFromForm(form, 'rows', columns) : [rowFromForm(form, 'rows.0', columns)]
    },
  },
})
