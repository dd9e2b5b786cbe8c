import { z } from 'zod'
import { DEPARTMENTS } from '@/shared/plan/department'
import { numberWanted } from '@/shared/columns/number-wanted'
import { STAGES } from '@/shared/plan/stage'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { WORKS_KINDS } from '@/shared/works/works-kind'

/* Pieces that many inputs share; each speaks to the person typing. */

/** Programme codes are kept in capitals. */
export const programmeCode = z
  .string()
  .trim()
  .toUpperCase()
  .regex(
    /^[A-Z0-9][A-Z0-9-]{1,23}$/,
    'A programme code has 2 to 24 letters, digits or hyphens, such as LX-41.',
  )

export const line = (what: string, max = 200) =>
  z
    .string({ error: `${what} must be filled in.` })
    .trim()
    .min(1, `${what} must be filled in.`)
    .max(max, `${what} has at most ${max} characters.`)

/** The code or name that something of the works is called by: as typed, one space between words. */
export const worksCode = (what: string) => line(what, 80).transform((code) => code.replace(/\s+/g, ' '))

/** Something of the works, for what may be kept in a programme or there. */
export const worksSubject = z.strictObject({
  kind: z.enum(WORKS_KINDS, { error: 'Say of what of the works.' }),
  code: line('The code', 80),
})

export const paragraph = (what: string) => line(what, 2000)

/** May be left empty. */
export const optionalLine = (what: string, max = 500) =>
  z.string().trim().max(max, `${what} has at most ${max} characters.`).default('')

export const reason = line('The reason', 1000)

export const wholeNumber = (what: string, min: number, max: number) =>
  z
    .number({ error: numberWanted(what) })
    .int(`${what} must be a whole number.`)
    .min(min, `${what} lies between ${min} and ${max}.`)
    .max(max, `${what} lies between ${min} and ${max}.`)

/** A specified value, parsed further by its parameter's declaration. */
export const jsonValue = z.json() as unknown as z.ZodType<JsonValue, JsonValue>

export const department = z.enum(DEPARTMENTS, { error: 'Choose a department.' })
export const stage = z.enum(STAGES, { error: 'Choose a stage.' })
export const id = z.uuid({ error: 'It is not known here. Load the page again.' })
export const sha256Hex = z.string().regex(/^[0-9a-f]{64}$/, 'The file is not known here. Upload it again.')

export const emailAddress = z
  .string()
  .trim()
  .toLowerCase()
  .pipe(z.email({ error: 'This is not an e-mail address.' }))
