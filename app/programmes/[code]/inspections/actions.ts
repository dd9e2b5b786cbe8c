'use server'
import { inspectionsAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { number, submit, text } from '@/app/forms/submit'
import { kindMeantBy } from '@/shared/inspection/typed-defect-kind'

/** Many assemblies at once, one a line: serial number, joints seen, then defects as kind@joint. */
export async function recordMany(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const common = {
    inspectedOn: text(form, 'inspectedOn'),
    inspector: text(form, 'inspector'),
    magnification: number(form, 'magnification'),
    note: '',
  }
  const lines = text(form, 'lines')
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter(Boolean)
  const inspections = lines.map((line) => {
    const [assembly = '', joints = '', ...defects] = line.split(/[;\t]/).map((cell) => cell.trim())
    return {
      ...common,
      assembly,
      jointsSeen: Number.isNaN(Number(joints)) ? joints : Number(joints),
      defects: defects.filter(Boolean).map((defect) => {
        const [kind = '', joint = ''] = defect.split('@').map((part) => part.trim())
        return { kind: kindMeantBy(kind) ?? kind, joint }
      }),
    }
  })
  return submit(
    'record-inspection',
    form,
    () => ({ programme, inspections }),
    () => inspectionsAddress(programme),
  )
}

export async function withdrawInspection(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  return submit(
    'withdraw-inspection',
    form,
    () => ({ programme, inspection: text(form, 'inspection'), reason: text(form, 'reason') }),
    () => inspectionsAddress(programme),
  )
}
