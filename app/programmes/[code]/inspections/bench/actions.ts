'use server'
import { benchAddress } from '@/app/addresses'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { number, submit, text } from '@/app/forms/submit'
import { kindMeantBy } from '@/shared/inspection/typed-defect-kind'
import { rowsTyped } from './defect-typed'

/** One assembly at the bench; the next one follows. */
export async function recordAtBench(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const assembly = text(form, 'inspections.0.assembly')
  const inspection = {
    assembly,
    inspectedOn: text(form, 'inspections.0.inspectedOn'),
    inspector: text(form, 'inspections.0.inspector'),
    magnification: number(form, 'inspections.0.magnification'),
    jointsSeen: number(form, 'inspections.0.jointsSeen'),
    defects: rowsTyped(typedIn(form)).map(({ joint, kind, xMm, yMm, note }) => ({
      kind: kindMeantBy(kind) ?? kind,
      joint,
      xMm: numberIn(xMm),
      yMm: numberIn(yMm),
      note: note.trim() || undefined,
    })),
    note: text(form, 'inspections.0.note'),
  }
  return submit(
    'record-inspection',
    form,
    () => ({ programme, inspections: [inspection] }),
    () => `${benchAddress(programme)}?after=${encodeURIComponent(assembly)}`,
  )
}

/** A number as typed; a text that is none is passed on, so that it is told back. */
function numberIn(typed: string): number | string | undefined {
  const plain = typed.trim().replace(',', '.')
  if (!plain) return undefined
  return Number.isNaN(Number(plain)) ? typed : Number(plain)
}
