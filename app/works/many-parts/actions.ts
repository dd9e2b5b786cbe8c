'use server'
import { createHash } from 'node:crypto'
import { revalidatePath } from 'next/cache'
import { rowsFromForm } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { sentBack, unfitToSend } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { signedIn } from '@/lib/auth/session'
import { performUnparsed } from '@/lib/commands/perform'
import { counted } from '@/shared/quantity/counted'
import { MANY_COLUMNS, MOST_AT_ONCE } from './many-columns'

/**
 * Describes each part of a table, one command a row. A row that is refused stands in the way of no other; sent again, the
 * rows that were described answer as they did.
 */
export async function describeMany(_state: FormState, form: FormData): Promise<FormState> {
  const person = await signedIn()
  const unfit = unfitToSend(person)
  if (!person || unfit) return sentBack(form, unfit ?? '')
  const rows = rowsFromForm(form, 'parts', MANY_COLUMNS)
  if (rows.length === 0) return sentBack(form, 'Load or fill in one row at least.')
  if (rows.length > MOST_AT_ONCE)
    return sentBack(form, `At most ${MOST_AT_ONCE} parts are described at once. Take them in several goes.`)
  const fields: Record<string, string> = {}
  let described = 0
  for (const [at, { code, ...values }] of rows.entries()) {
    const outcome = await performUnparsed(
      person.personId,
      'describe-part',
      { code: code ?? '', values, reason: text(form, 'reason') },
      { key: keyFor(text(form, 'key'), String(code)) },
    )
    if (outcome.ok) described += 1
    else Object.assign(fields, atTheirBoxes(at, outcome.message, outcome.fields))
  }
  revalidatePath('/', 'layout')
  const refused = rows.length - described
  if (refused > 0)
    return sentBack(
      form,
      `${counted(described, 'part is', 'parts are')} described, ${refused} not: ${Object.values(fields)[0] ?? ''} What is wrong stands at each row; mend it and send the table again.`,
      fields,
    )
  return { fields: {}, typed: {}, done: `${counted(described, 'part is', 'parts are')} described.` }
}

/** What a command says of a box of its input, at the box of the row; of the number where it says no box. */
function atTheirBoxes(
  at: number,
  message: string,
  fields: Readonly<Record<string, string>>,
): Record<string, string> {
  const { reason, ...others } = fields
  const entries = Object.entries(others)
  return {
    ...(reason !== undefined && { reason }),
    ...(entries.length === 0
      ? { [`parts.${at}.code`]: message }
      : Object.fromEntries(
          entries.map(([field, said]) => [`parts.${at}.${field.replace(/^values\./, '')}`, said]),
        )),
  }
}

/** One key a part and form, so that a form sent twice describes nothing twice. */
const keyFor = (form: string, code: string): string => {
  const hex = createHash('sha256').update(`${form}\n${code}`).digest('hex')
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`
}
