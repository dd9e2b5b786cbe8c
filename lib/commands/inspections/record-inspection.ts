import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode } from '@/lib/commands/inputs'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import { gatesShutBefore, STAGE_OF_INSPECTION } from '@/shared/gate/shut-gates'
import { inspectionInput, refuseBadInspection } from '@/lib/commands/inspections/inspection-input'

/** Records one assembly looked at, or a whole list of them: all or none. */
export const recordInspection = defineCommand({
  name: 'record-inspection',
  input: z.strictObject({
    programme: programmeCode,
    inspections: z
      .array(inspectionInput)
      .min(1, 'There is no inspection.')
      .max(5000, 'At most 5000 assemblies at once.'),
  }),
  load: (tx, _input, context) => loadJudged(tx, context),
  decide({ judgement }, { inspections }, { newId, today }) {
    for (const [index, inspection] of inspections.entries())
      refuseBadInspection(inspection, today, `inspections.${index}`)
    const rows = inspections.map((entry) => ({ id: newId(), ...entry }))
    return {
      change: rows,
      record: {
        gatesShut: gatesShutBefore(STAGE_OF_INSPECTION, judgement.gates),
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
