'use server'
import { actionAddress, itemAddress } from '@/app/addresses'
import { rowsFromForm, valueFromForm } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { findParameter } from '@/shared/catalogue/standard-plan'
import type { CommandName } from '@/shared/policy'
import { previewRevision } from './preview-revision'

const back = (form: FormData, place = ''): string =>
  `${itemAddress(text(form, 'programme'), text(form, 'item'))}${place}`

const send = (command: CommandName, form: FormData, more: object, place = ''): Promise<FormState> =>
  submit(
    command,
    form,
    () => ({ programme: text(form, 'programme'), item: text(form, 'item'), ...more }),
    () => back(form, place),
  )

/** A parameter's value out of the form its declaration gave. */
function valueOf(form: FormData): unknown {
  const parameter = findParameter(text(form, 'parameter'))
  if (!parameter) return null
  const { shape } = parameter
  return shape.kind === 'field'
    ? (valueFromForm(form, 'value', shape.column) ?? null)
    : rowsFromForm(form, 'value', shape.columns)
}

/** Saves a revision, or says what saving it would change. */
export async function reviseParameter(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, parameter] = [text(form, 'programme'), text(form, 'parameter')]
  if (text(form, 'intent') === 'preview') return previewRevision(programme, parameter, valueOf(form), form)
  const toInput = () => ({
    programme,
    parameter,
    value: valueOf(form),
    seen: Number(text(form, 'seen')),
    reason: text(form, 'reason'),
  })
  return submit('revise-parameter', form, toInput, () => back(form, `#${parameter}`))
}

export async function attachLink(_state: FormState, form: FormData): Promise<FormState> {
  return send(
    'attach-evidence',
    form,
    { kind: text(form, 'kind'), note: text(form, 'note'), what: { url: text(form, 'url') } },
    '#evidence',
  )
}

export async function withdrawEvidence(_state: FormState, form: FormData): Promise<FormState> {
  const toInput = () => ({
    programme: text(form, 'programme'),
    evidence: text(form, 'evidence'),
    reason: text(form, 'reason'),
  })
  return submit('withdraw-evidence', form, toInput, () => back(form, '#evidence'))
}

export async function askAction(_state: FormState, form: FormData): Promise<FormState> {
  const toInput = () => ({
    programme: text(form, 'programme'),
    item: text(form, 'item'),
    from: text(form, 'from'),
    to: text(form, 'to'),
    kind: text(form, 'kind'),
    question: text(form, 'question'),
    dueOn: text(form, 'dueOn'),
  })
  return submit('ask-action', form, toInput, ({ result }) =>
    actionAddress(text(form, 'programme'), Number(result['action'])),
  )
}

export async function approveItem(_state: FormState, form: FormData): Promise<FormState> {
  return send(
    'approve-item',
    form,
    { department: text(form, 'department'), digest: text(form, 'digest'), comment: text(form, 'comment') },
    '#approvals',
  )
}

export async function proposeSetAside(_state: FormState, form: FormData): Promise<FormState> {
  return send('propose-set-aside', form, { reason: text(form, 'reason') })
}

export async function decideSetAside(_state: FormState, form: FormData): Promise<FormState> {
  return send('decide-set-aside', form, {
    agree: text(form, 'decision') === 'agree',
    comment: text(form, 'comment'),
  })
}

export async function restoreItem(_state: FormState, form: FormData): Promise<FormState> {
  return send('restore-item', form, { reason: text(form, 'reason') })
}
