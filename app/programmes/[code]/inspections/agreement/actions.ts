'use server'
import { agreementAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit } from '@/app/forms/submit'
import { numberTyped, text } from '@/app/forms/typed-text'
import { callsPasted } from './calls-pasted'
import { callMeantBy } from './call-meant'

/** Many calls at once: inspector, joint, call, round and what is known, one a line. */
export async function recordCallsPasted(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const common = { study: text(form, 'study'), calledOn: text(form, 'calledOn') }
  const rows = callsPasted(text(form, 'lines')).map((row) => ({ ...common, ...row }))
  const answer = await submit(
    'add-record',
    form,
    () => ({ programme, kind: 'inspector-call', rows }),
    () => agreementAddress(programme),
  )
  return atItsField(answer, 'lines')
}

/** One inspector’s calls of a set, each typed by its first letters. */
export async function recordBlindCalls(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const common = {
    study: text(form, 'study'),
    calledOn: text(form, 'calledOn'),
    inspector: text(form, 'inspector'),
    round: numberTyped(form, 'round') ?? 0,
  }
  const kept = positionsOf(form).filter((at) => text(form, `calls.${at}.call`))
  const rows = kept.map((at) => ({
    ...common,
    joint: text(form, `calls.${at}.joint`),
    call: callMeantBy(text(form, `calls.${at}.call`)),
  }))
  const answer = await submit(
    'add-record',
    form,
    () => ({ programme, kind: 'inspector-call', rows }),
    () => agreementAddress(programme),
  )
  return { ...answer, fields: atItsRow(answer.fields, kept) }
}

/** What is wrong with the nth row that was sent, said at the box it was typed into. */
const atItsRow = (fields: FormState['fields'], kept: readonly number[]): FormState['fields'] =>
  Object.fromEntries(
    Object.entries(fields).map(([name, message]) => {
      const [, sent, box] = /^rows\.(\d+)\.(\w+)$/.exec(name) ?? []
      if (sent === undefined) return [name, message]
      return [`calls.${kept[Number(sent)]}.${box}`, message]
    }),
  )

const positionsOf = (form: FormData): number[] =>
  [...form.keys()].flatMap((name) => {
    const [, at] = /^calls\.(\d+)\.call$/.exec(name) ?? []
    return at === undefined ? [] : [Number(at)]
  })

/** Whatever is wrong with a line is said at the box the lines were pasted into. */
const atItsField = (state: FormState, field: string): FormState =>
  state.message ? { ...state, fields: { ...state.fields, [field]: state.message } } : state
