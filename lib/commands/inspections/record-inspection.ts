import { z } from 'zod'
import { defineCommand, loadNothing } from '@/lib/commands/command'
import { line, optionalLine, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { calendarDate } from '@/shared/columns/calendar-date'
import { numberWanted } from '@/shared/columns/number-wanted'
import { defectSchema } from '@/shared/records/inspection'
import { Refused } from '@/shared/refused'

const inspection = z.strictObject({
  assembly: line('The assembly', 40),
  inspectedOn: calendarDate('The date of the inspection'),
  inspector: line('The inspector', 80),
  magnification: z
    .number({ error: numberWanted('The magnification') })
    .min(1, 'The magnification lies between 1 and 100 times.')
    .max(100, 'The magnification lies between 1 and 100 times.'),
  jointsSeen: wholeNumber('The joints seen', 1, 100_000),
  defects: z.array(defectSchema).max(5000, 'More than 5000 defects on one assembly: set it aside.'),
  note: optionalLine('The note', 1000),
})

/** Records one assembly looked at, or a whole list of them: all or none. */
export const recordInspection = defineCommand({
  name: 'record-inspection',
  input: z.strictObject({
    programme: programmeCode,
    inspections: z
      .array(inspection)
      .min(1, 'There is no inspection.')
      .max(5000, 'At most 5000 assemblies at once.'),
  }),
  load: loadNothing,
  decide(_nothing, { inspections }, { newId, today }) {
    for (const [index, { assembly, inspectedOn, jointsSeen, defects }] of inspections.entries()) {
      const field = `inspections.${index}`
      if (inspectedOn > today)
        throw new Refused(`${assembly}: the date lies in the future.`, {
          [`${field}.inspectedOn`]: 'This date lies in the future.',
        })
      const joints = new Set(defects.map(({ joint }) => joint)).size
      if (joints > jointsSeen) {
        throw new Refused(`${assembly}: ${joints} joints with defects, but only ${jointsSeen} joints seen.`, {
          [`${field}.jointsSeen`]: 'Fewer than the joints with defects.',
        })
      }
    }
    const rows = inspections.map((entry) => ({ id: newId(), ...entry }))
    return {
      change: rows,
      record: {
        inspections: rows.map(
          ({ id, assembly, inspectedOn, inspector, magnification, jointsSeen, defects, note }) => ({
            id,
            assembly,
            inspectedOn,
            inspector,
            magnification,
            jointsSeen,
            note,
            defects: defects.map((defect) => ({ ...JSON.parse(JSON.stringify(defect)) })),
          }),
        ),
      },
      result: { inspections: rows.length },
    }
  },
  async apply(tx, rows, { programmeId, actor, now }) {
    await tx.inspection.createMany({
      data: rows.map((row) => ({ ...row, programmeId, addedById: actor.personId, at: now })),
    })
  },
})
