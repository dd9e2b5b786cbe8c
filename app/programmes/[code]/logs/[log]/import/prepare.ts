import { commandInput } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { readingsOfFile, type Prepare } from '@/app/imports/prepared'
import { instantTyped } from '@/app/forms/instant-in-form'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { logNamed } from '../log-of'
import { logFields, withInstants } from './log-fields'

/** A previewed file on its way into a log: whole, or not at all. */
export const prepareLogImport: Prepare<ProgrammeView> = async (importer, form, tell) => {
  const [log, file] = [logNamed(importer.into, text(form, 'log')), text(form, 'file')]
  if (!log) return { message: 'There is no such log in this programme.' }
  const read = await readingsOfFile(importer, form, file, logFields(log.code, log.characteristic), tell)
  if ('message' in read) return read
  const timed = withInstants(read.readings, instantTyped(form, 'startedAt'))
  if ('message' in timed) return { message: timed.message, fields: { startedAt: timed.message } }
  return {
    input: commandInput('add-readings', form, {
      log: () => log.code,
      readings: () => timed.readings,
      mapping: () => ({ ...read.mapping }),
    }),
  }
}
