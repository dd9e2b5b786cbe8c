'use server'
import { partAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import { formAction, previewedAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { PART_COLUMNS } from '@/shared/works/part-columns'

const values = (form: FormData) => rowFromForm(form, 'values', PART_COLUMNS)

export const describePart = formAction('describe-part', { own: { values } })
export const revisePart = previewedAction('revise-part', { own: { values } })
export const approvePart = previewedAction('approve-part')
export const withdrawPart = previewedAction('withdraw-part')
export const reinstatePart = previewedAction('reinstate-part')
export const withdrawDrawing = formAction('withdraw-drawing', {
  then: (_done, form) => `${partAddress(text(form, 'part'))}#drawings`,
})
