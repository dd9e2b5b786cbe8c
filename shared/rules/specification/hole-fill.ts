import { FILL_EDITIONS, type FillEdition } from '@/shared/materials/hole-fill'
import { MOLTEN_SOLDER } from '@/shared/materials/fillet-data'
import { published } from '@/shared/sources/provenance'
import { capillaryRiseMm } from '@/shared/physics/fillet'
import { capillaryRiseMin } from '@/shared/plan/limits/joint-geometry'
import { capillaryRiseGuard } from '@/shared/plan/limits/specification-guards'
import { contactAngle, fillEdition } from '@/shared/plan/parameters/joint-geometry'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import type { ValueOf } from '@/shared/plan/parameter'
import { productClass, serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { holeOf, leadOf } from '@/shared/holes/joint-row'
import { measure } from '@/shared/rules/measure'

type Grade = ValueOf<typeof productClass>

export const holeFill = rule({
  id: 'hole-fill',
  title: 'Fill of plated holes',
  why: 'Solder that fills the hole supports barrel and lead through temperature swings; how much is asked depends on class and edition, and a gap must exist for it to rise in.',
  formula:
    '2γ · cos θ/(ρ · g · gap) ≥ factor · board thickness; fill asked by edition, class and leads of the component',
  stage: 'specification',
  version: 3,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    boardThickness,
    grade: productClass,
    years: serviceYears,
    angle: contactAngle,
    edition: optional(fillEdition),
    rise: capillaryRiseMin,
    guard: capillaryRiseGuard,
  },
  judge({ holes, wall, boardThickness: boardMm, grade, years, angle, edition, ...rises }) {
    const editions = edition ? [edition] : (Object.keys(FILL_EDITIONS) as FillEdition[])
    const sources = [
      ...editions.map((key) => FILL_EDITIONS[key].source),
      MOLTEN_SOLDER.source,
      published('IPC-A-610F (July 2014), 7.3.5: fill below 100 % may not do in thermal shock'),
    ]
    const limit = `${editions.length > 1 ? 'No edition is chosen, so the strictest applies' : FILL_EDITIONS[editions[0] ?? 'full'].label}; the gap must draw solder at rest ${rises.rise.value} times as high as the board is thick (${rises.rise.document})`
    const plated = holes.filter((row) => row.plated)
    if (plated.length === 0) return notApplicable('No hole is plated.')
    return judgedByParts({
      parts: plated.map((row) =>
        partOrContradiction(row.component, () =>
          judgeRow(row, { wall, boardMm, angle, grade, editions, ...rises }),
        ),
      ),
      noun: 'plated holes',
      limit,
      working: [
        {
          label: 'Rise at rest',
          formula: '2γ · cos θ/(ρ · g · gap)',
          numbers: `γ = 0.40 N/m, ρ = 8000 kg/m³, θ = ${formatQuantity(angle, '°')}, gap = nominal radial clearance by row`,
          result: 'by row below',
        },
      ],
      sources,
      notes: [
        'Solder could rise far above any board: holes stay short of fill because it freezes on cold copper, because gas cannot leave, or because something does not wet. Give joints to planes thermal relief and preheat.',
        ...(years >= 10
          ? [
              `Acceptance figures are for workmanship; for ${formatQuantity(years, 'years')} of service aim at full fill.`,
            ]
          : []),
        'Editions differ on class 2 and on components with 14 leads or more; a row that does not say how many leads a component has gets no relief.',
      ],
    })
  },
})

interface Terms {
  readonly wall: number
  readonly boardMm: number
  readonly angle: number
  readonly grade: Grade
  readonly editions: readonly FillEdition[]
  readonly rise: GoverningRequirement
  readonly guard: GoverningRequirement
}

/** The fill asked, % of the board's thickness; zero where no edition asks any. */
export function fillAskedPct(
  { leadsEach, boardMm, grade }: { leadsEach: number | undefined; boardMm: number; grade: Grade },
  editions: readonly FillEdition[],
): number {
  return Math.max(
    ...editions.map((key) => {
      const { minPct, manyLeads } = FILL_EDITIONS[key]
      const asked = minPct[grade] ?? 0
      // The relief is the component's, by its own leads; unsaid, it has few.
      if (grade !== '2' || !manyLeads || !(leadsEach !== undefined && leadsEach >= manyLeads.from))
        return asked
      return Math.min(manyLeads.pct, (manyLeads.mm / boardMm) * 100)
    }),
  )
}

function judgeRow(row: LeadHole, { wall, boardMm, angle, grade, editions, rise, guard }: Terms): Part {
  const gapMm = (holeOf(row, wall).nominalMm - leadOf(row).nominalMm) / 2
  const asked = fillAskedPct({ leadsEach: row.leadsEach, boardMm, grade }, editions)
  const found = capillaryRiseMm(gapMm, angle)
  const part = partOn({
    subject: row.component,
    measured: {
      gap: measure(gapMm, 'mm'),
      fillAsked: measure(asked, '%'),
      depthAsked: measure((asked / 100) * boardMm, 'mm'),
    },
    found: `a gap of ${formatQuantity(gapMm, 'mm', 3)} draws solder ${formatQuantity(found, 'mm', 3)} high at rest; ${asked === 0 ? 'no fill is asked' : `${formatQuantity(asked, '%', 3)} fill is asked, ${formatQuantity((asked / 100) * boardMm, 'mm', 3)}`}`,
    margin: {
      found,
      limit: rise.value * boardMm,
      unit: 'mm',
      direction: 'at least',
      guardBand: guard.value * boardMm,
    },
  })
  return part.verdict === 'meets'
    ? part
    : { ...part, remedy: { message: `${row.component}: narrow the gap, or ask for better wetting.` } }
}
