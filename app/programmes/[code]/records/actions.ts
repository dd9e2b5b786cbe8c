'use server'
import { recordKindAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'

export async function addRecord(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, kind] = [text(form, 'programme'), text(form, 'kind')]
  const known: RecordKind | undefined = Object.hasOwn(RECORD_KINDS, kind)
    ? RECORD_KINDS[kind as RecordKindKey]
    : undefined
  const rows = known ? [rowFromForm(form, 'rows.0', known.columns)] : []
  return submit(
    'add-record',
    form,
    () => ({ programme, kind, rows }),
    () => recordKindAddress(programme, kind),
  )
}

export async function withdrawRecord(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  return submit(
    'withdraw-record',
    form,
    () => ({ programme, record: text(form, 'record'), reason: text(form, 'reason') }),
    () => recordKindAddress(programme, text(form, 'kind')),
  )
}
