import { ALLOYS } from '@/shared/materials/alloys'
import { CAPILLARY_LENGTH_MM } from '@/shared/materials/fillet-data'
import { computed, fromMemory } from '@/shared/sources/provenance'
import { filletAngleGuard, leadStatusGuard } from '@/shared/plan/limits/specification-guards'
import { contactAngle, leadProjection } from '@/shared/plan/parameters/joint-geometry'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import type { Margin, Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { verdictOn } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { decidingPart, judgedByParts, partOrContradiction } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'
import { jointShapeOf, type JointTerms } from '@/shared/holes/joint-shape'

/** The two contact angles together at which the profile is straight. */
const STRAIGHT_DEG = 90

interface Terms extends JointTerms {
  readonly projectionMm: number
  readonly angleGuardDeg: number
  readonly statusGuardMm: number
}

export const jointFillet = rule({
  id: 'joint-fillet',
  title: 'Fillet and solder of the joint',
  why: 'A concave fillet from the edge of the land up the lead shows that both wetted; a lead too short hides it, and a land too small gives it nothing to stand on.',
  formula:
    'contact angles of lead and land together < 90°; projection − fillet height ≥ 0, height = width · (cos θ_land − sin θ_lead)/(cos θ_lead − sin θ_land)',
  stage: 'specification',
  version: 3,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    boardThickness,
    projection: leadProjection,
    angle: contactAngle,
    alloy: solderAlloy,
    angleGuard: filletAngleGuard,
    statusGuard: leadStatusGuard,
  },
  judge({ holes, wall, boardThickness: boardMm, projection, angle, alloy, ...guards }) {
    const terms: Terms = {
      boardMm,
      barrelUm: wall,
      angleDeg: angle,
      projectionMm: projection,
      angleGuardDeg: guards.angleGuard.value,
      statusGuardMm: guards.statusGuard.value,
    }
    const parts = holes.map((row) => partOrContradiction(row.component, () => judgeRow(row, terms)))
    const deciding = decidingPart(parts)
    const row = deciding && holes[parts.indexOf(deciding)]
    const perBoard = solderOfBoard(holes, terms, ALLOYS[alloy].densityGcm3)
    return judgedByParts({
      parts,
      noun: 'joint types',
      limit:
        'A concave fillet (contact angles of lead and land together below 90°), with the lead standing out of it',
      working: row && deciding.margin ? workingOf(row, terms) : [],
      sources: [
        fromMemory('Geometry of a circular arc that meets lead and land at their contact angles'),
        computed('Theorem of Pappus: a body of revolution is its section times the path of its centroid'),
        CAPILLARY_LENGTH_MM.source,
        ALLOYS[alloy].source,
      ],
      notes: [
        ...(perBoard === undefined
          ? []
          : [
              `Solder of all joints of a board, holes full and fillets at the contact angle: about ${formatQuantity(perBoard, 'g', 3)}.`,
            ]),
        'Holds while a joint is much smaller than 3.2 mm; angles in degrees, since the words for them differ between documents.',
      ],
    })
  },
})

function judgeRow(row: LeadHole, terms: Terms): Part {
  const { fillet, solderMm3 } = jointShapeOf(row, terms)
  const angles: Margin = {
    found: 2 * terms.angleDeg,
    limit: STRAIGHT_DEG,
    unit: '°',
    direction: 'at most',
    guardBand: terms.angleGuardDeg,
  }
  const standing: Margin = {
    found: Number((terms.projectionMm - fillet.heightMm).toFixed(7)),
    limit: 0,
    unit: 'mm',
    direction: 'at least',
    guardBand: terms.statusGuardMm,
  }
  const profile = verdictOn(angles)
  const hidden = verdictOn(standing) !== 'meets'
  const part: Part = {
    subject: row.component,
    // A fillet that covers the lead's end is no fault of the joint, but hides whether the lead wetted.
    verdict: profile === 'meets' && hidden ? 'marginal' : profile,
    found: `${fillet.shape} fillet ${formatQuantity(fillet.widthMm, 'mm', 3)} wide and ${formatQuantity(fillet.heightMm, 'mm', 3)} high, ${formatQuantity(solderMm3, 'mm³', 3)} of solder`,
    margin: profile === 'meets' ? standing : angles,
    measured: {
      fillet: fillet.shape,
      width: measure(fillet.widthMm, 'mm'),
      height: measure(fillet.heightMm, 'mm'),
      solder: measure(solderMm3, 'mm³'),
    },
  }
  if (part.verdict === 'meets') return part
  if (profile !== 'meets') return { ...part, remedy: angleRemedy(terms) }
  const value = stepAbove(fillet.heightMm + terms.statusGuardMm, 0.05)
  return {
    ...part,
    remedy: {
      message: `${row.component}: let the lead stand out ${formatQuantity(value, 'mm')}, or make the land smaller.`,
      parameter: leadProjection.key,
      value,
    },
  }
}

function angleRemedy({ angleGuardDeg }: Terms): Remedy {
  const value = (STRAIGHT_DEG - angleGuardDeg) / 2
  return {
    message: `Ask for better wetting: ${formatQuantity(value, '°')} or less on lead and land.`,
    parameter: contactAngle.key,
    value,
  }
}

/** Grams a board takes; undefined when a row contradicts itself. */
function solderOfBoard(holes: readonly LeadHole[], terms: Terms, densityGcm3: number): number | undefined {
  try {
    return holes.reduce(
      (sum, row) => sum + row.joints * jointShapeOf(row, terms).solderMm3 * densityGcm3 * 1e-3,
      0,
    )
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}

function workingOf(row: LeadHole, terms: Terms): WorkingLine[] {
  const { leadMm, fillet, fillets, barrelMm3, filletMm3, solderMm3 } = jointShapeOf(row, terms)
  const mm3 = (value: number): string => formatQuantity(value, 'mm³')
  return [
    {
      label: `Width at ${row.component}`,
      formula: '(land − lead)/2, a lead with corners as a round one of equal section',
      numbers: `(${formatQuantity(row.landMm, 'mm')} − ${formatQuantity(leadMm, 'mm')})/2`,
      result: formatQuantity(fillet.widthMm, 'mm'),
    },
    {
      label: 'Height',
      formula: 'width · (cos θ_land − sin θ_lead)/(cos θ_lead − sin θ_land)',
      numbers: `θ = ${formatQuantity(terms.angleDeg, '°')} on both`,
      result: formatQuantity(fillet.heightMm, 'mm'),
    },
    {
      label: 'Solder in a full hole',
      formula: '(hole section − lead section) · board',
      result: mm3(barrelMm3),
    },
    {
      label: 'Solder of a fillet',
      formula: '2π · (triangle · its centroid ∓ segment under the arc · its centroid), radii from the axis',
      numbers: `triangle of ${formatQuantity(fillet.widthMm, 'mm')} · ${formatQuantity(fillet.heightMm, 'mm')}/2, ${fillet.shape} arc`,
      result: mm3(filletMm3),
    },
    {
      label: 'Solder of the joint',
      formula: 'hole + fillets',
      numbers: `${mm3(barrelMm3)} + ${fillets} · ${mm3(filletMm3)}`,
      result: mm3(solderMm3),
    },
  ]
}
