'use server'
import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { v5 } from 'uuid'
import { lineAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { instantInForm } from '@/app/forms/instant-in-form'
import { send, sentBack, unfitToSend } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { signedIn } from '@/lib/auth/session'
import { findCharacteristic } from '@/shared/records/characteristics'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { blockName, blocksIn } from './day-blocks'

/**
 * Adds a reading to each log of a line that something was typed for; each is an entry of its machine's own trail. What is
 * refused comes back with what was typed, and what was stored does not.
 */
export async function enterDay(_state: FormState, form: FormData): Promise<FormState> {
  const unfit = unfitToSend(await signedIn())
  if (unfit) return sentBack(form, unfit)
  const filled = blocksIn(form).filter((block) => Object.keys(rowOf(form, block)).length > 0)
  if (filled.length === 0)
    return sentBack(
      form,
      'Nothing is typed yet. Fill in the readings that were taken; the others may stay empty.',
    )
  const refused = new Map<string, FormState>()
  for (const block of filled) {
    const outcome = await send('add-readings', withOwnKey(form, block), () => inputOf(form, block))
    if ('fields' in outcome) refused.set(block, outcome)
  }
  const stored = filled.length - refused.size
  if (stored > 0) revalidatePath('/', 'layout')
  if (refused.size === 0) redirect(lineAddress(text(form, 'line')))
  return comeBack(form, filled, refused)
}

const characteristicOf = (form: FormData, block: string) =>
  findCharacteristic(text(form, blockName(block, 'characteristic')))

const rowOf = (form: FormData, block: string) =>
  rowFromForm(form, blockName(block, 'reading'), characteristicOf(form, block)?.columns ?? {})

const inputOf = (form: FormData, block: string) => ({
  machine: text(form, blockName(block, 'machine')),
  log: text(form, blockName(block, 'log')),
  readings: readingsFromRows([{ at: instantInForm(form, 'at'), ...rowOf(form, block) }]),
  file: null,
  mapping: null,
})

/** The same form sent twice stores each reading once. */
function withOwnKey(form: FormData, block: string): FormData {
  const own = new FormData()
  own.set('key', v5(text(form, blockName(block, 'log')), text(form, 'key')))
  return own
}

function comeBack(
  form: FormData,
  filled: readonly string[],
  refused: ReadonlyMap<string, FormState>,
): FormState {
  const typed = typedIn(form)
  for (const block of filled)
    if (!refused.has(block))
      for (const name of Object.keys(typed))
        if (name.startsWith(`${blockName(block, 'reading')}.`)) delete typed[name]
  const stored = filled
    .filter((block) => !refused.has(block))
    .map((block) => text(form, blockName(block, 'log')))
  const said = [...refused].map(
    ([block, { message }]) => `${text(form, blockName(block, 'log'))}: ${message ?? ''}`,
  )
  return {
    message: [
      ...(stored.length > 0 ? [`Stored: ${stored.join(', ')}.`] : ['Nothing was stored.']),
      ...said,
    ].join(' '),
    fields: Object.assign(
      {},
      ...[...refused].map(([block, { fields }]) => fieldsOfBlock(block, fields)),
    ) as FormState['fields'],
    typed,
  }
}

/** `readings.columns.bathC.0` or `readings.0.bathC` of the command is the box of that column in this block. */
function fieldsOfBlock(block: string, fields: FormState['fields']): FormState['fields'] {
  return Object.fromEntries(
    Object.entries(fields).map(([path, message]) => {
      const column = path
        .split('.')
        .find((part) => part !== 'readings' && part !== 'columns' && Number.isNaN(Number(part)))
      return [
        column === 'at' || column === undefined ? 'at' : `${blockName(block, 'reading')}.${column}`,
        message,
      ]
    }),
  )
}
