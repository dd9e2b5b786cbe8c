import { expect, test } from 'vitest'
import { tooLargeToSend } from '@/app/forms/form-size'
import { UNTOUCHED } from '@/app/forms/form-state'
import config from '@/next.config'

const MB = 1024 * 1024

function formOf(fields: Record<string, string>): FormData {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.set(name, value)
  return form
}

/** As a browser would send it (RFC 7578). */
const sentBytes = async (form: FormData): Promise<number> =>
  (await new Response(form).arrayBuffer()).byteLength

test('what the server takes is what the sentence says', () => {
  expect(config.experimental?.serverActions?.bodySizeLimit).toBe('2mb')
  expect(tooLargeToSend(formOf({ note: 'x'.repeat(3 * MB) }), UNTOUCHED)).toContain('one may take 2 MB')
})

test('a form that is let through is within the limit as it is sent, whatever its letters and fields', async () => {
  const wide = formOf({ note: 'µ'.repeat(MB - 1000) })
  const many = formOf(Object.fromEntries(Array.from({ length: 9000 }, (_, row) => [`rows.${row}.note`, 'a'])))
  const full = formOf({ note: 'x'.repeat(2 * MB - 1000) })
  for (const form of [wide, many, full]) {
    expect(tooLargeToSend(form, UNTOUCHED)).toBeUndefined()
    expect(await sentBytes(form)).toBeLessThanOrEqual(2 * MB)
  }
})

test('after a refusal what was typed goes along twice, and counts twice', () => {
  const note = 'x'.repeat(1.2 * MB)
  expect(tooLargeToSend(formOf({ note }), UNTOUCHED)).toBeUndefined()
  expect(tooLargeToSend(formOf({ note }), { message: 'No.', fields: {}, typed: { note } })).toContain(
    '2.4 MB',
  )
})
