import { z } from 'zod'
import { kindOf } from '@/shared/columns/column-kinds'
import { columnSchema } from '@/shared/columns/column-schema'
import type { Characteristic } from '@/shared/records/characteristic'
import type { Readings } from '@/shared/records/readings'
import { readingsFromRows } from '@/shared/records/readings-from-rows'

export const MAX_READINGS_A_CALL = 5000
export const LARGEST_BODY_BYTES = 1024 * 1024

const instant = z.iso
  .datetime({
    offset: true,
    error: 'The instant is a date and time with its zone, such as 2026-03-31T14:05:00Z.',
  })
  .describe('When it was read (RFC 3339), with zone or offset.')

const logCode = z
  .string({ error: 'Say which log: its code.' })
  .trim()
  .min(1, 'Say which log: its code.')
  .max(40)
  // The database refuses to look for U+0000, which no code holds.
  .refine((code) => !code.includes('\0'), 'No log has such a code.')

/** A call before its log, and so the columns of its readings, is known. */
export const pushEnvelope = z.strictObject(
  {
    log: logCode.describe('The code of the log.'),
    readings: z
      .array(z.record(z.string(), z.unknown()), { error: 'The readings are a list.' })
      .min(1, 'There are no readings.')
      .max(MAX_READINGS_A_CALL, `At most ${MAX_READINGS_A_CALL} readings a call: send several.`),
  },
  { error: 'Send an object with the log’s code and its readings: {"log": …, "readings": [ … ]}.' },
)

/** One reading of a characteristic as a machine sends it. */
export const readingSchema = ({ columns }: Characteristic) =>
  z.strictObject({
    at: instant,
    ...Object.fromEntries(
      Object.entries(columns).map(([name, column]) => {
        const unit = kindOf(column).unit(column) ?? '1'
        const said = `${column.label}${unit === '1' ? '' : `, ${unit}`}.${column.help ? ` ${column.help}` : ''}`
        return [name, columnSchema(column).describe(said)]
      }),
    ),
  })

/** Readings as sent, as they are stored: instants in epoch milliseconds. */
export const readingsOf = (sent: readonly Readonly<Record<string, unknown>>[]): Readings =>
  readingsFromRows(sent.map((reading) => ({ ...reading, at: Date.parse(String(reading['at'])) })))
