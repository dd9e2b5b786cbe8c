import { z } from 'zod'
import { sha256Hex } from '@/lib/commands/inputs'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import type { Column } from '@/shared/columns/column'
import { readingProblems } from '@/shared/records/check-readings'
import type { Readings } from '@/shared/records/readings'
import { Refused } from '@/shared/refused'

/** Readings as a command takes them: typed in, or read from the stored file of that hash. */
export const readingsInput = z.strictObject({
  count: z
    .number()
    .int()
    .min(1, 'There are no readings.')
    .max(1_000_000, 'More than a million readings at once: split the file.'),
  columns: z.custom<Readings['columns']>(
    (value) => typeof value === 'object' && value !== null && Object.values(value).every(Array.isArray),
    'The readings cannot be read.',
  ),
})
export const sourceFile = sha256Hex.nullable()

/** Refuses all readings when one cannot be taken, and names the first few. */
export function refuseBadReadings(
  readings: Readings,
  columns: Readonly<Record<string, Column>>,
  sharesOfWhole?: readonly string[],
): void {
  const problems = readingProblems(readings, columns, sharesOfWhole)
  if (problems.length === 0) return
  const fields = Object.fromEntries(
    problems.map(({ reading, column, message }) => [
      `readings.${Math.max(0, reading - 1)}.${column}`,
      message,
    ]),
  )
  const [first] = problems
  throw new Refused(`Reading ${first?.reading}: ${first?.message} Nothing was stored.`, fields)
}

/** What the trail says of a batch: enough to prove later that the stored readings and their file are these. */
export const batchRecord = (
  batch: string,
  readings: Readings,
  sha256: string | null,
  stored: { size: number; mediaType: string } | null,
) => ({
  batch,
  readings: readings.count,
  readingsSha256: nativeSha256(JSON.stringify(readings.columns)),
  file: sha256,
  ...(stored ? { size: stored.size, mediaType: stored.mediaType } : {}),
})
