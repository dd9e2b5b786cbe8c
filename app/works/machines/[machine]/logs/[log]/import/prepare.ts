import { commandInput } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { readingsOfFile, type Prepare } from '@/app/imports/prepared'
import { instantTyped } from '@/app/forms/instant-in-form'
import type { MachineLogView } from '@/lib/queries/works/machine-log'
import { logFields, withInstants } from './log-fields'

/** A previewed file on its way into a log: whole, or not at all. */
export const prepareLogImport: Prepare<MachineLogView> = async (importer, form, tell) => {
  const { log } = importer.into
  const read = await readingsOfFile(
    importer,
    form,
    text(form, 'file'),
    logFields(log.code, log.characteristic),
    tell,
  )
  if ('message' in read) return read
  const timed = withInstants(read.readings, instantTyped(form, 'startedAt'))
  if ('message' in timed) return { message: timed.message, fields: { startedAt: timed.message } }
  return {
    input: commandInput('add-readings', form, {
      readings: () => timed.readings,
      mapping: () => ({ ...read.mapping }),
    }),
  }
}
