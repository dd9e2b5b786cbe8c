'use server'
import { redirect } from 'next/navigation'
import { lotAddress, signInAddress } from '@/app/addresses'
import { rowFromForm, rowsFromForm } from '@/app/forms/column-value'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { number, submit, text } from '@/app/forms/submit'
import { mappingFrom } from '@/app/imports/mapping'
import { signedIn } from '@/lib/auth/session'
import { readImport } from '@/lib/queries/import-preview'
import { lotTarget, targetFields } from '@/lib/readings/import-target'
import type { Readings } from '@/shared/records/readings'
import { readingsFromRows } from '@/shared/records/readings-from-rows'

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
  if (!(await signedIn())) redirect(signInAddress())
  const [programme, lot, file] = [text(form, 'programme'), text(form, 'lot'), text(form, 'file')]
  const target = lotTarget(lot, text(form, 'method'))
  if (target?.kind !== 'lot')
    return {
      message: 'Choose how it was tested.',
      fields: { method: 'Choose how it was tested.' },
      typed: typedIn(form),
    }
  const readings = file
    ? await readingsOfFile(form, file, target)
    : readingsFromRows(rowsFromForm(form, 'readings', target.method.columns))
  if (!readings)
    return {
      message: 'The file cannot be imported as it is; see what is wrong with it. Nothing was stored.',
      fields: {},
      typed: typedIn(form),
    }
  const toInput = () => ({
    programme,
    lot,
    method: target.method.key,
    testedOn: text(form, 'testedOn'),
    testedBy: text(form, 'testedBy'),
    instrument: text(form, 'instrument') || null,
    conditions: rowFromForm(form, 'conditions', target.method.conditions),
    readings,
    file: file || null,
  })
  return submit('test-lot', form, toInput, () => lotAddress(programme, lot))
}

async function readingsOfFile(
  form: FormData,
  file: string,
  target: NonNullable<ReturnType<typeof lotTarget>>,
): Promise<Readings | undefined> {
  const fields = targetFields(target)
  const given = Object.fromEntries(
    [...form].filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  )
  const found = await readImport(file, fields, mappingFrom(given, fields))
  return found?.parsed.ok ? found.parsed.readings : undefined
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
