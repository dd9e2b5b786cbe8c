'use server'
import { formAction } from '@/app/forms/form-action'
import { numberTyped, text } from '@/app/forms/typed-text'
import { kindMeantBy } from '@/shared/inspection/typed-defect-kind'
import { decimalTyped } from '@/shared/quantity/decimal-typed'

/** Many assemblies at once, one a line: serial number, joints inspected, then defects as kind@joint. */
export const recordMany = formAction('record-inspection', {
  own: {
    inspections: (form) => {
      const common = {
        inspectedOn: text(form, 'inspectedOn'),
        inspector: text(form, 'inspector'),
        magnification: numberTyped(form, 'magnification'),
      }
      return text(form, 'lines')
        .split(/\r?\n/)
        .map((line) => line.trim())
        .filter(Boolean)
        .map((line) => ({ ...common, ...inspectionOnLine(line) }))
    },
  },
})

function inspectionOnLine(line: string) {
  const [assembly = '', joints = '', ...defects] = line.split(/[;\t]/).map((cell) => cell.trim())
  return {
    assembly,
    jointsSeen: decimalTyped(joints) ?? joints,
    defects: defects.filter(Boolean).map((defect) => {
      const [kind = '', joint = ''] = defect.split('@').map((part) => part.trim())
      return { kind: kindMeantBy(kind) ?? kind, joint }
    }),
  }
}
