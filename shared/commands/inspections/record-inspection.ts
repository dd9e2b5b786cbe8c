import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { gatesShutInWords, recordedGatesShut } from '@/shared/commands/gates-shut'
import { counted } from '@/shared/quantity/counted'
import { foldedList } from '@/shared/quantity/folded-names'

const MOST_NAMED = 5

/** " (bridge at T1-3, icicle at R4-1 and 3 more)" */
function defectsNamed(defects: readonly { readonly kind: string; readonly joint: string }[]): string {
  if (defects.length === 0) return ''
  const named = defects.slice(0, MOST_NAMED).map(({ kind, joint }) => `${kind} at ${joint}`)
  const left = defects.length - named.length
  return ` (${named.join(', ')}${left > 0 ? ` and ${left} more` : ''})`
}

export const recordInspection = defineFace({
  label: 'Record an inspection',
  done: 'Recorded an inspection',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({
    inspections: z.array(
      z.object({
        assembly: z.string(),
        jointsSeen: z.number(),
        inspectedOn: z.string(),
        inspector: z.string(),
        magnification: z.number(),
        defects: z.array(z.object({ kind: z.string(), joint: z.string() })),
        note: z.string(),
      }),
    ),
    gatesShut: recordedGatesShut,
  }),
  reads: ({ inspections, gatesShut }) => {
    const joints = inspections.reduce((sum, { jointsSeen }) => sum + jointsSeen, 0)
    const defects = inspections.flatMap((entry) => entry.defects)
    const [only, ...others] = inspections
    return {
      subject: `${inspections.length === 1 ? 'assembly' : 'assemblies'} ${foldedList(inspections.map(({ assembly }) => assembly))}`,
      what: [
        counted(inspections.length, 'assembly', 'assemblies'),
        counted(joints, 'joint inspected', 'joints inspected'),
        `${counted(defects.length, 'defect', 'defects')}${defectsNamed(defects)}`,
        only && `by ${only.inspector} on ${only.inspectedOn} at ${only.magnification}×`,
        gatesShutInWords(gatesShut),
      ]
        .filter(Boolean)
        .join(', '),
      words: others.length === 0 ? only?.note : undefined,
    }
  },
  leads: () => ({ kind: 'inspections' }),
})
