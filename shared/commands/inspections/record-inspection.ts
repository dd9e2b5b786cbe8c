import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { gatesShutInWords, recordedGatesShut } from '@/shared/commands/gates-shut'
import { counted } from '@/shared/quantity/counted'
import { foldedList } from '@/shared/quantity/folded-names'

export const recordInspection = defineFace({
  label: 'Record an inspection',
  done: 'Recorded an inspection',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({
    inspections: z.array(
      z.object({
        assembly: z.string(),
        jointsSeen: z.number(),
        defects: z.array(z.unknown()),
        note: z.string(),
      }),
    ),
    gatesShut: recordedGatesShut,
  }),
  reads: ({ inspections, gatesShut }) => {
    const joints = inspections.reduce((sum, { jointsSeen }) => sum + jointsSeen, 0)
    const defects = inspections.reduce((sum, entry) => sum + entry.defects.length, 0)
    const [only, ...others] = inspections
    return {
      subject: foldedList(inspections.map(({ assembly }) => assembly)),
      what: [
        counted(inspections.length, 'assembly', 'assemblies'),
        counted(joints, 'joint seen', 'joints inspected'),
        counted(defects, 'defect', 'defects'),
        gatesShutInWords(gatesShut),
      ]
        .filter(Boolean)
        .join(', '),
      words: others.length === 0 ? only?.note : undefined,
    }
  },
  leads: () => ({ kind: 'inspections' }),
})
