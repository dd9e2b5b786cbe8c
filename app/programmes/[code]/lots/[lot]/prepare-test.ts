import { lotAddress } from '@/app/addresses'
import { rowFromForm, rowsFromForm } from '@/app/forms/column-value'
import { text } from '@/app/forms/submit'
import { readingsOfFile, type Prepare } from '@/app/imports/prepared'
import { lotTarget, targetFields } from '@/lib/readings/import-target'
import { readingsFromRows } from '@/shared/records/readings-from-rows'

/** A test of a lot, with its readings typed in or read from the file that was previewed. */
export const prepareLotTest: Prepare = async (importer, form, tell) => {
  const [lot, file] = [text(form, 'lot'), text(form, 'file')]
  const programme = importer.view.code
  const target = lotTarget(lot, text(form, 'method'))
  const says = 'Choose how it was tested.'
  if (target?.kind !== 'lot') return { says, fields: { method: says } }
  const { method } = target
  const read = file
    ? await readingsOfFile(importer, form, file, targetFields(target), tell)
    : { readings: readingsFromRows(rowsFromForm(form, 'readings', method.columns)) }
  if ('says' in read) return read
  return {
    command: 'test-lot',
    input: {
      programme,
      lot,
      method: method.key,
      testedOn: text(form, 'testedOn'),
      testedBy: text(form, 'testedBy'),
      instrument: text(form, 'instrument') || null,
      conditions: rowFromForm(form, 'conditions', method.conditions),
      readings: read.readings,
      file: file || null,
    },
    address: lotAddress(programme, lot),
  }
}
