import type { z } from 'zod'
import { rowSchema } from '@/shared/columns/column-schema'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { Refused } from '@/shared/refused'
import { PART_COLUMNS, partFaults, type PartValues } from '@/shared/works/part-columns'

/** What nothing is known of may be left out. */
type GivenValues = Pick<PartValues, 'description' | 'kind'> & Partial<PartValues>

/** A part's values, as its columns declare them. */
export const partValues = rowSchema(PART_COLUMNS) as z.ZodType<PartValues, GivenValues>

/** The values as they are stored and recorded: what is left open is not in them. Refuses what contradicts itself. */
export function settledValues(values: PartValues): Readonly<Record<string, JsonValue>> {
  const faults = Object.entries(partFaults(values))
  if (faults.length > 0)
    throw new Refused(
      'The values contradict each other.',
      Object.fromEntries(faults.map(([column, fault]) => [`values.${column}`, fault])),
    )
  return JSON.parse(JSON.stringify(values)) as Record<string, JsonValue>
}
