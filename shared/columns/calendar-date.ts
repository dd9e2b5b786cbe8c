import { z } from 'zod'
import { dateSchema } from './kinds/date-column'

/** A date that exists, as 'YYYY-MM-DD', where it is no column: see `dateSchema`. */
export const calendarDate = (what: string) => dateSchema(z, what)
