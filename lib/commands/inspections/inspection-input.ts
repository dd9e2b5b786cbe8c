import { z } from 'zod'
import { line, optionalLine, wholeNumber } from '@/lib/commands/inputs'
import { calendarDate } from '@/shared/columns/calendar-date'
import { numberWanted } from '@/shared/columns/number-wanted'
import { defectSchema } from '@/shared/records/inspection'
import { Refused } from '@/shared/refused'

/** One assembly looked at, as it is recorded and as it is corrected. */
export const inspectionInput = z.strictObject({
  assembly: line('The assembly', 40),
  inspectedOn: calendarDate('The date of the inspection'),
  inspector: line('The inspector', 80),
  magnification: z
    .number({ error: numberWanted('The magnification') })
    .min(1, 'The magnification lies between 1 and 100 times.')
    .max(100, 'The magnification lies between 1 and 100 times.'),
  jointsSeen: wholeNumber('The joints inspected', 1, 100_000),
  defects: z.array(defectSchema).max(5000, 'More than 5000 defects on one assembly: set it aside.'),
  note: optionalLine('The note', 1000),
})

/** Refuses a look that lies ahead, or with more defective joints than joints inspected. `field` is where it stands in the form. */
export function refuseBadInspection(
  { assembly, inspectedOn, jointsSeen, defects }: z.output<typeof inspectionInput>,
  today: string,
  field: string,
): void {
  if (inspectedOn > today)
    throw new Refused(`${assembly}: the date lies in the future.`, {
      [`${field}.inspectedOn`]: 'This date lies in the future.',
    })
  const joints = new Set(defects.map(({ joint }) => joint)).size
  if (joints > jointsSeen)
    throw new Refused(
      `${assembly}: ${joints} joints with defects, but only ${jointsSeen} joints inspected.`,
      {
        [`${field}.jointsSeen`]: 'Fewer than the joints with defects.',
      },
    )
}
