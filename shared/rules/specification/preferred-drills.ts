import { DRILL_SERIES } from '@/shared/materials/preferred-drills'
import { nearestDrill } from '@/shared/physics/drill-choice'
import { drillOffSeriesMax } from '@/shared/plan/limits/lead-holes'
import { drillSeries, barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOrContradiction } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { holeOf } from '@/shared/holes/joint-row'
import { measure } from '@/shared/rules/measure'

export const preferredDrills = rule({
  id: 'preferred-drills',
  title: 'Holes from preferred drills',
  why: 'A drill off the series is one more tool to buy, load and mistake for its neighbour.',
  formula: '|drill − nearest drill of the series| ≤ most',
  stage: 'specification',
  version: 1,
  reads: { holes: leadHoles, wall: barrelPlating, series: optional(drillSeries), off: drillOffSeriesMax },
  judge({ holes, wall, series, off }) {
    if (!series) return notApplicable('Production has named no preferred series.')
    const { label, sizesMm, source } = DRILL_SERIES[series]
    const parts = holes.map((row, index) =>
      partOrContradiction(row.component, () =>
        judgeRow(row, index, { barrelUm: wall, sizesMm, offMm: off.value }),
      ),
    )
    const used = new Set(parts.flatMap((part, index) => drillOf(part, holes[index], wall, sizesMm)))
    return judgedByParts({
      parts,
      noun: 'kinds of hole',
      limit: `Drills of the preferred series (${label})`,
      working: [
        {
          label: 'Drills used',
          result: [...used]
            .sort((one, other) => one - other)
            .map((size) => formatQuantity(size, 'mm'))
            .join(', '),
        },
      ],
      sources: [source],
    })
  },
})

/** The preferred drill of a row that could be judged. */
function drillOf(
  part: Part,
  row: LeadHole | undefined,
  barrelUm: number,
  sizesMm: readonly number[],
): number[] {
  if (part.verdict === 'undetermined' || !row) return []
  const drill = nearest(row, barrelUm, sizesMm)
  return drill ? [drill.drillMm] : []
}

function nearest(row: LeadHole, barrelUm: number, sizesMm: readonly number[]) {
  const { drillMm } = holeOf(row, barrelUm)
  return nearestDrill({ wantedMm: drillMm, minMm: 0, maxMm: Infinity, barrelUm: 0, sizesMm })
}

interface Terms {
  readonly barrelUm: number
  readonly sizesMm: readonly number[]
  /** So far off a size of the series a drill is that size. */
  readonly offMm: number
}

/** Differences of decimals carry binary rounding error, mm. */
const DUST_MM = 1e-4

function judgeRow(row: LeadHole, index: number, { barrelUm, sizesMm, offMm }: Terms): Part {
  const { drillMm, nominalMm } = holeOf(row, barrelUm)
  const preferred = nearest(row, barrelUm, sizesMm)
  if (!preferred)
    return { subject: row.component, verdict: 'marginal', found: 'the series holds no drill at all' }
  if (Math.abs(preferred.drillMm - drillMm) < offMm + DUST_MM) {
    return {
      subject: row.component,
      verdict: 'meets',
      measured: { drill: measure(preferred.drillMm, 'mm') },
      found: `drill ${formatQuantity(preferred.drillMm, 'mm')}`,
    }
  }
  const value =
    row.holeGiven === 'drilled'
      ? preferred.drillMm
      : Number((preferred.drillMm - (drillMm - nominalMm)).toFixed(4))
  const remedy: Remedy = {
    message: `${row.component}: use drill ${formatQuantity(preferred.drillMm, 'mm')}, if the lead’s clearance allows.`,
    cell: { parameter: leadHoles.key, row: index, column: 'holeMm', value },
  }
  return {
    subject: row.component,
    verdict: 'marginal',
    measured: { drill: measure(drillMm, 'mm'), nearest: measure(preferred.drillMm, 'mm') },
    found: `needs a drill of ${formatQuantity(drillMm, 'mm')}, which is not in the series`,
    remedy,
  }
}
