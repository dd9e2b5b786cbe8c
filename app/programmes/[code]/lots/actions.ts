'use server'
import { lotAddress } from '@/app/addresses'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { number, submit, text } from '@/app/forms/submit'
import { importerInto } from '@/app/imports/importer'
import { prepareLotTest } from './[lot]/prepare-test'

export async function receiveLot(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const texts = ['code', 'kind', 'part', 'supplier', 'dateCode', 'receivedOn', 'packing', 'supplierResult']
  const numbers = ['quantity', 'temperatureC', 'relativeHumidityPct']
  const toInput = () => ({
    programme,
    ...Object.fromEntries(texts.map((name) => [name, text(form, name)])),
    ...Object.fromEntries(numbers.map((name) => [name, number(form, name)])),
  })
  return submit('receive-lot', form, toInput, ({ result }) => lotAddress(programme, String(result['lot'])))
}

/** A test with its readings typed in, or read from the file that was previewed. */
export async function testLot(_state: FormState, form: FormData): Promise<FormState> {
  const importer = await importerInto(text(form, 'programme'), 'test-lot')
  if ('says' in importer) return { message: importer.says, fields: {}, typed: typedIn(form) }
  const prepared = await prepareLotTest(importer, form)
  if ('says' in prepared)
    return { message: prepared.says, fields: prepared.fields ?? {}, typed: typedIn(form) }
  const { command, input, address } = prepared
  return submit(
    command,
    form,
    () => input,
    () => address,
  )
}

export async function withdrawLotTest(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  return submit(
    'withdraw-lot-test',
    form,
    () => ({ programme, test: text(form, 'test'), reason: text(form, 'reason') }),
    () => lotAddress(programme, text(form, 'lot')),
  )
}

export async function disposeLot(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, lot] = [text(form, 'programme'), text(form, 'lot')]
  return submit(
    'dispose-lot',
    form,
    () => ({ programme, lot, verdict: text(form, 'verdict'), reason: text(form, 'reason') }),
    () => lotAddress(programme, lot),
  )
}

export async function traceLot(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, lot] = [text(form, 'programme'), text(form, 'lot')]
  const assemblies = text(form, 'assemblies')
    .split(/[\s,;]+/)
    .filter(Boolean)
  return submit(
    'trace-lot',
    form,
    () => ({ programme, lot, assemblies }),
    () => lotAddress(programme, lot),
  )
}
