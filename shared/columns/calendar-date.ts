import { z } from 'zod'
import { isDate } from '@/shared/quantity/is-date'

/** A date that exists, as 'YYYY-MM-DD'; `what` begins each refusal, as in "The due date must be a date.". */
export const calendarDate = (what: string) =>
  z
    .string({ error: `${what} must be a date.` })
    .regex(/^\d{4}-\d{2}-\d{2}$/, `${what} must be a date such as 2026-03-31.`)
    .refine(isDate, `${what} is not a date of the calendar.`)
