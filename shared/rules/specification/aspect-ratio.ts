import { published } from '@/shared/sources/provenance'
import { aspectRatioMax } from '@/shared/plan/limits/lead-holes'
import { aspectRatioGuard } from '@/shared/plan/limits/specification-guards'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { measure } from '@/shared/rules/measure'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'
import { holeOf } from '@/shared/holes/joint-row'

export const aspectRatio = rule({
  id: 'aspect-ratio',
  title: 'Plated holes against board thickness',
  why: 'The deeper a hole for its width, the thinner copper is plated in its middle, and the sooner the barrel cracks.',
  formula: 'board thickness/drilled hole, at most the ratio',
  stage: 'specification',
  version: 1,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    boardThickness,
    max: aspectRatioMax,
    guard: aspectRatioGuard,
  },
  judge({ holes, wall, boardThickness: boardMm, max, guard }) {
    const limit = `At most ${formatQuantity(max.value, '×')} (${max.document})`
    const sources = [
      max.limit.byDefault.from,
      published('Wilson, The Circuit Designer’s Companion (2011): up to 6 without trouble, 12 possible'),
    ]
    const parts = holes
      .filter((row) => row.plated)
      .map((row) =>
        partOrContradiction(row.component, () => {
          const { drillMm } = holeOf(row, wall)
          const found = boardMm / drillMm
          const part = partOn({
            subject: row.component,
            found: `${formatQuantity(boardMm, 'mm')} through a drilled hole of ${formatQuantity(drillMm, 'mm')}: ${formatQuantity(found, '×', 3)}`,
            measured: { board: measure(boardMm, 'mm'), drill: measure(drillMm, 'mm') },
            margin: {
              found,
              limit: max.value,
              unit: '×',
              direction: 'at most',
              guardBand: (guard.value / 100) * max.value,
            },
          })
          if (part.verdict === 'meets') return part
          return { ...part, remedy: { message: `${row.component}: ${remedyInWords(boardMm, max, guard)}.` } }
        }),
      )
    if (parts.length === 0) return notApplicable('No hole is plated.')
    return judgedByParts({
      parts,
      noun: 'plated holes',
      limit,
      working: [{ label: 'Ratio', formula: 'board thickness/drilled hole', result: 'by row below' }],
      sources,
    })
  },
})

/** The drill that keeps out of the guard band; a band as wide as the limit leaves no room to any. */
function remedyInWords(
  boardMm: number,
  max: Pick<GoverningRequirement, 'value'>,
  guard: Pick<GoverningRequirement, 'value'>,
): string {
  const aim = max.value * (1 - guard.value / 100)
  if (!(aim > 0)) return 'state a guard band narrower than the limit: within this one no hole meets'
  return `drill at least ${formatQuantity(stepAbove(boardMm / aim, 0.05), 'mm')}, or use a thinner board`
}
