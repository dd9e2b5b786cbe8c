import { copperToEdgeLeast, partsToEdgeLeast } from '@/shared/plan/limits/spacings'
import { edgeClearanceGuard } from '@/shared/plan/limits/specification-guards'
import type { Parameter } from '@/shared/plan/parameter'
import { copperToEdge, partsToEdge } from '@/shared/plan/parameters/spacings'
import type { Ruling } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part } from '@/shared/rules/finding'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'

export const edgeClearance = rule({
  id: 'edge-clearance',
  title: 'Clearance to the board’s edges',
  why: 'Copper near a cut edge is bared and corrodes; parts and joints under the conveyor’s fingers are neither soldered nor left whole.',
  formula: 'distance of copper, and of parts, from the edge ≥ least',
  stage: 'specification',
  version: 1,
  reads: {
    copper: copperToEdge,
    parts: partsToEdge,
    copperLeast: copperToEdgeLeast,
    partsLeast: partsToEdgeLeast,
    guard: edgeClearanceGuard,
  },
  judge({ copper, parts, copperLeast, partsLeast, guard }) {
    return judgedByParts({
      parts: [
        judgeEdge('Copper', copper, { least: copperLeast, guard }, copperToEdge),
        judgeEdge('Components at carried edges', parts, { least: partsLeast, guard }, partsToEdge),
      ],
      noun: 'clearances',
      limit: `Copper ${formatQuantity(copperLeast.value, 'mm')} (${copperLeast.document}); components ${formatQuantity(partsLeast.value, 'mm')} (${partsLeast.document})`,
      working: [],
      sources: [copperLeast.limit.byDefault.from, partsLeast.limit.byDefault.from],
    })
  },
})

function judgeEdge(
  subject: string,
  foundMm: number,
  { least, guard }: { least: Ruling; guard: Ruling },
  parameter: Parameter,
): Part {
  const guardBand = (guard.value / 100) * least.value
  const part = partOn({
    subject,
    about: { distance: parameter.key },
    found: `${formatQuantity(foundMm, 'mm')} from the edge`,
    margin: { found: foundMm, limit: least.value, unit: 'mm', direction: 'at least', guardBand },
  })
  if (part.verdict === 'meets') return part
  const value = stepAbove(least.value + guardBand, 0.05)
  return {
    ...part,
    remedy: {
      says: `${subject}: keep ${formatQuantity(value, 'mm')} from the edge.`,
      parameter: parameter.key,
      value,
    },
  }
}
