'use server'
import { rowFromForm, rowsFromForm } from '@/app/forms/column-value'
import { formAction, previewedAction } from '@/app/forms/form-action'
import { numberTyped, text } from '@/app/forms/typed-text'
import { DEFECT_COLUMNS } from '@/app/programmes/[code]/inspections/defect-columns'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import { LOT_COLUMNS, LOT_TEST_COLUMNS } from '@/shared/records/correctable-columns'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

/* Forms whose boxes are those of declared columns, holding what stands. */

export const correctLot = formAction('correct-lot', {
  own: { values: (form) => rowFromForm(form, 'values', LOT_COLUMNS) },
})

/** The method names the conditions; it is not asked for. */
export const correctLotTest = previewedAction('correct-lot-test', {
  own: {
    values: (form) => rowFromForm(form, 'values', LOT_TEST_COLUMNS),
    conditions: (form) => {
      const method: TestMethod | undefined = ownMember(TEST_METHODS, text(form, 'method'))
      return rowFromForm(form, 'conditions', method?.conditions ?? {})
    },
  },
})

export const correctRecord = previewedAction('correct-record', {
  own: {
    values: (form) => {
      const kind: RecordKind | undefined = ownMember(RECORD_KINDS, text(form, 'kind'))
      return rowFromForm(form, 'values', kind?.columns ?? {})
    },
  },
})

export const correctInspection = formAction('correct-inspection', {
  own: {
    values: (form) => ({
      assembly: text(form, 'values.assembly'),
      inspectedOn: text(form, 'values.inspectedOn'),
      inspector: text(form, 'values.inspector'),
      magnification: numberTyped(form, 'values.magnification'),
      jointsSeen: numberTyped(form, 'values.jointsSeen'),
      defects: rowsFromForm(form, 'values.defects', DEFECT_COLUMNS),
      note: text(form, 'values.note'),
    }),
  },
})
