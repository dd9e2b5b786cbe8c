'use server'
import { benchAddress } from '@/app/addresses'
import { formAction } from '@/app/forms/form-action'
import { typedIn } from '@/app/forms/form-state'
import { numberTyped, text } from '@/app/forms/typed-text'
import { notationIn } from '@/app/forms/works-in-form'
import { kindMeantBy } from '@/shared/inspection/typed-defect-kind'
import { decimalTyped } from '@/shared/quantity/decimal-typed'
import { rowsTyped } from './defect-typed'

/** One assembly at the bench; the next one follows. */
export const recordAtBench = formAction('record-inspection', {
  own: { inspections: (form) => [inspectionOf(form)] },
  saidThere: true,
  then: (_done, form) =>
    `${benchAddress(text(form, 'programme'))}?after=${encodeURIComponent(text(form, 'inspections.0.assembly'))}`,
})

const inspectionOf = (form: FormData) => ({
  assembly: text(form, 'inspections.0.assembly'),
  inspectedOn: text(form, 'inspections.0.inspectedOn'),
  inspector: text(form, 'inspections.0.inspector'),
  magnification: numberTyped(form, 'inspections.0.magnification'),
  jointsSeen: numberTyped(form, 'inspections.0.jointsSeen'),
  defects: rowsTyped(typedIn(form)).map(({ joint, kind, xMm, yMm, note }) => ({
    kind: kindMeantBy(kind) ?? kind,
    joint,
    xMm: numberIn(xMm, form),
    yMm: numberIn(yMm, form),
    note: note.trim() || undefined,
  })),
  note: text(form, 'inspections.0.note'),
})

/** A number as typed; a text that is none is passed on, so that it is told back. */
function numberIn(typed: string, form: FormData): number | string | undefined {
  const plain = typed.trim()
  return plain ? (decimalTyped(plain, notationIn(form).decimal) ?? typed) : undefined
}
