import { HOLE_ALLOWANCES } from '@/shared/materials/hole-allowances'
import { holeWindow } from '@/shared/physics/hole-window'
import { clearanceWindow, type Interval } from '@/shared/physics/lead-clearance'
import { radialClearanceMin, radialClearanceMax } from '@/shared/plan/limits/lead-holes'
import { holeWindowGuard } from '@/shared/plan/limits/specification-guards'
import {
  drillSeries,
  barrelPlating,
  leadHoles,
  producibilityLevel,
  type LeadHole,
} from '@/shared/plan/parameters/lead-holes'
import type { ValueOf } from '@/shared/plan/parameter'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, type Part, type WorkingLine } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { decidingPart, judgedByParts, partOrContradiction, tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { proposeHole, withinBoth, type ProposalTerms } from '@/shared/holes/hole-proposal'
import { holeOf, leadOf } from '@/shared/holes/joint-row'

type Level = ValueOf<typeof producibilityLevel>

export const holeProducibility = rule({
  id: 'hole-producibility',
  title: 'Hole for its lead, by producibility level',
  why: 'The level says how closely a hole must follow its lead for leads to be inserted and the hole to fill without special care.',
  formula: 'least hole ≥ largest lead + allowance; largest hole ≤ least lead + allowance, by level',
  stage: 'specification',
  version: 3,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    level: producibilityLevel,
    series: optional(drillSeries),
    clearanceMin: radialClearanceMin,
    clearanceMax: radialClearanceMax,
    guard: holeWindowGuard,
  },
  judge({ holes, wall, level, series, clearanceMin, clearanceMax, guard }) {
    const clearance = { minMm: clearanceMin.value, maxMm: clearanceMax.value }
    const allowance = HOLE_ALLOWANCES[level]
    const limit = `Level ${level}: least hole at least ${formatQuantity(allowance.minOverMaxMm, 'mm')} over the largest lead, largest hole at most ${formatQuantity(allowance.maxOverMinMm, 'mm')} over the least lead (${allowance.source.cite})`
    const plated = holes.filter((row) => row.plated)
    if (plated.length === 0) return notApplicable('No hole is plated; the levels speak of plated holes.')
    const parts = plated.map((row) =>
      partOrContradiction(row.component, () =>
        judgeRow(row, level, {
          index: holes.indexOf(row),
          barrelUm: wall,
          series,
          clearance,
          guardMm: guard.value,
        }),
      ),
    )
    const deciding = decidingPart(parts)
    const row = deciding && plated[parts.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'kinds of hole',
      limit,
      working: row && deciding.margin ? workingOf(row, wall, level) : [],
      sources: [allowance.source],
    })
  },
})

interface Terms extends ProposalTerms {
  /** Radial; what the remedy keeps to as well. */
  readonly clearance: Interval
  /** Of diameter, kept free at either end of the window. */
  readonly guardMm: number
}

function judgeRow(row: LeadHole, level: Level, proposal: Terms): Part {
  const hole = holeOf(row, proposal.barrelUm)
  const lead = leadOf(row)
  const { minMm, maxMm, feasible } = holeWindow(lead, level)
  const [holeMin, holeMax] = [clean(hole.minMm), clean(hole.maxMm)]
  const margin = tightest(
    {
      found: holeMin,
      limit: clean(minMm),
      unit: 'mm',
      direction: 'at least',
      guardBand: proposal.guardMm,
    },
    { found: holeMax, limit: clean(maxMm), unit: 'mm', direction: 'at most', guardBand: proposal.guardMm },
  )
  const window = feasible
    ? `the window is ${formatQuantity(minMm, '1')} to ${formatQuantity(maxMm, 'mm')}`
    : `no hole suits: the least would be ${formatQuantity(minMm, 'mm')} and the most ${formatQuantity(maxMm, 'mm')}`
  const verdict = feasible ? verdictOn(margin) : 'fails'
  const found = `hole ${formatQuantity(holeMin, '1')} to ${formatQuantity(holeMax, 'mm')} finished; ${window}`
  const measured = {
    minHole: measure(holeMin, 'mm'),
    maxHole: measure(holeMax, 'mm'),
    minAsked: measure(clean(minMm), 'mm'),
    maxAsked: measure(clean(maxMm), 'mm'),
  }
  const part: Part = { subject: row.component, verdict, found, margin, measured }
  if (verdict === 'meets') return part
  return {
    ...part,
    remedy: proposeHole({
      ...proposal,
      row,
      hole,
      lead,
      ...withinBoth({ minMm, maxMm }, clearanceWindow(lead, proposal.clearance), hole.toleranceMm),
    }),
  }
}

const clean = (mm: number): number => Number(mm.toFixed(7))

function workingOf(row: LeadHole, barrelUm: number, level: Level): WorkingLine[] {
  const { minOverMaxMm, maxOverMinMm } = HOLE_ALLOWANCES[level]
  const hole = holeOf(row, barrelUm)
  const lead = leadOf(row)
  const { minMm, maxMm } = holeWindow(lead, level)
  const mm = (value: number): string => formatQuantity(clean(value), 'mm')
  return [
    {
      label: `Finished hole of ${row.component}`,
      formula: 'nominal ± tolerance',
      numbers: `${mm(hole.nominalMm)} ± ${mm(hole.toleranceMm)}`,
      result: `${mm(hole.minMm)} to ${mm(hole.maxMm)}`,
    },
    {
      label: 'Least hole',
      formula: 'largest lead + allowance',
      numbers: `${mm(lead.maxMm)} + ${mm(minOverMaxMm)}`,
      result: mm(minMm),
    },
    {
      label: 'Most hole',
      formula: 'least lead + allowance',
      numbers: `${mm(lead.minMm)} + ${mm(maxOverMinMm)}`,
      result: mm(maxMm),
    },
  ]
}
