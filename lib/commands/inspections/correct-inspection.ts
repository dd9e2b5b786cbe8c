import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import {
  correctionInput,
  decideCorrection,
  standingOf,
  writeCorrection,
} from '@/lib/commands/corrections/correction'
import { id } from '@/lib/commands/inputs'
import { inspectionInput, refuseBadInspection } from '@/lib/commands/inspections/inspection-input'
import { Refused } from '@/shared/refused'

/** Other values for an assembly looked at, its defects among them. */
export const correctInspection = defineCommand({
  name: 'correct-inspection',
  input: z.strictObject({ ...correctionInput, inspection: id, values: inspectionInput }),
  async load(tx, { inspection: key }, { programmeId }) {
    const row = await tx.inspection.findFirst({ where: { id: key, programmeId, withdrawnAt: null } })
    if (!row) throw new Refused('This inspection does not count any more.')
    const { assembly, inspectedOn, inspector, magnification, jointsSeen, defects, note } = row
    return standingOf(tx, 'inspection', key, {
      assembly,
      inspectedOn,
      inspector,
      magnification,
      jointsSeen,
      defects,
      note,
    })
  },
  decide(standing, { values, seen, reason }, context) {
    refuseBadInspection(values, context.today, 'values')
    const { change, record } = decideCorrection(standing, values, { seen, reason }, context)
    return {
      change,
      record: { assembly: values.assembly, ...record },
      result: { inspection: standing.subjectId },
    }
  },
  apply: writeCorrection,
})
