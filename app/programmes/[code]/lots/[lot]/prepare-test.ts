import { rowFromForm, rowsFromForm } from '@/app/forms/column-value'
import { commandInput } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { readingsOfFile, type Prepare } from '@/app/imports/prepared'
import { lotTarget, targetFields } from '@/lib/readings/import-target'
import { readingsFromRows } from '@/shared/records/readings-from-rows'

/** A test of a lot, with its readings typed in or read from the file that was previewed. */
export const prepareLotTest: Prepare<unknown> = async (importer, form, tell) => {
  const file = text(form, 'file')
  const target = lotTarget(text(form, 'lot'), text(form, 'method'))
  const message = 'Choose how it was tested.'
  if (target?.kind !== 'lot') return { message, fields: { method: message } }
  const { method } = target
  const read = file
    ? await readingsOfFile(importer, form, file, targetFields(target), tell)
    : { readings: readingsFromRows(rowsFromForm(form, 'readings', method.columns)) }
  if ('message' in read) return read
  return {
    input: commandInput('test-lot', form, {
      conditions: () => rowFromForm(form, 'conditions', method.conditions),
      readings: () => read.readings,
    }),
  }
}
