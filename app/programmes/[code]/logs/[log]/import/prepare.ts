import { logAddress } from '@/app/addresses'
import { text } from '@/app/forms/submit'
import { readingsOfFile, type Prepared, type TellProgress } from '@/app/imports/prepared'
import { findCharacteristic } from '@/shared/records/characteristics'
import { logFields, withInstants } from './log-fields'

/** A previewed file on its way into a log: whole, or not at all. */
export async function prepareLogImport(form: FormData, tell?: TellProgress): Promise<Prepared> {
  const [programme, log, file] = [text(form, 'programme'), text(form, 'log'), text(form, 'file')]
  const characteristic = text(form, 'characteristic')
  if (!findCharacteristic(characteristic)) return { says: 'There is no such log.' }
  const read = await readingsOfFile(form, file, logFields(log, characteristic), tell)
  if ('says' in read) return read
  const timed = withInstants(read.readings, Date.parse(`${text(form, 'startedAt')}Z`))
  if ('says' in timed) return { says: timed.says, fields: { startedAt: timed.says } }
  return {
    command: 'add-readings',
    input: { programme, log, readings: timed.readings, file, mapping: { ...read.mapping } },
    address: logAddress(programme, log),
  }
}
