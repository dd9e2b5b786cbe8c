import { copperToEdgeMin, partsToEdgeMin } from '@/shared/plan/limits/spacings'
import { edgeClearanceGuard } from '@/shared/plan/limits/specification-guards'
import type { Parameter } from '@/shared/plan/parameter'
import { copperToEdge, partsToEdge } from '@/shared/plan/parameters/spacings'
import type { GoverningRequirement } from '@/shared/plan/requirement'
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
    copperMin: copperToEdgeMin,
    partsMin: partsToEdgeMin,
    guard: edgeClearanceGuard,
  },
  judge({ copper, parts, copperMin, partsMin, guard }) {
    return judgedByParts({
      parts: [
        judgeEdge('Copper', copper, { min: copperMin, guard }, copperToEdge),
        judgeEdge('Components at carried edges', parts, { min: partsMin, guard }, partsToEdge),
      ],
      noun: 'clearances',
      limit: `Copper ${formatQuantity(copperMin.value, 'mm')} (${copperMin.document}); components ${formatQuantity(partsMin.value, 'mm')} (${partsMin.document})`,
      working: [],
      sources: [copperMin.limit.byDefault.from, partsMin.limit.byDefault.from],
    })
  },
})

function judgeEdge(
  subject: string,
  foundMm: number,
  { min, guard }: { min: GoverningRequirement; guard: GoverningRequirement },
  parameter: Parameter,
): Part {
  const guardBand = (guard.value / 100) * min.value
  const part = partOn({
    subject,
    about: { distance: parameter.key },
    found: `${formatQuantity(foundMm, 'mm')} from the edge`,
    margin: { found: foundMm, limit: min.value, unit: 'mm', direction: 'at least', guardBand },
  })
  if (part.verdict === 'meets') return part
  const value = stepAbove(min.value + guardBand, 0.05)
  return {
    ...part,
    remedy: {
      message: `${subject}: keep ${formatQuantity(value, 'mm')} from the edge.`,
      parameter: parameter.key,
      value,
    },
  }
}
