import { JointSection } from '@/app/drawing/joint-section'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ALLOYS } from '@/shared/materials/alloys'
import { FILL_EDITIONS, type FillEdition } from '@/shared/materials/hole-fill'
import { contactAngle, fillEdition, leadProjection } from '@/shared/plan/parameters/joint-geometry'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { productClass } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import { fillAskedPct } from '@/shared/rules/specification/hole-fill'
import { DEFAULT_ANGLE_DEG, jointShapeOf, type JointShape, type JointTerms } from '@/shared/holes/joint-shape'
import { DrawnInPart, MAX_DRAWN } from './drawn-in-part'
import { orNothing, valueOf } from './value-of'

interface Terms extends JointTerms {
  readonly projectionMm: number
  readonly densityGcm3?: number | undefined
  readonly askedPct: (leadsEach: number | undefined) => number
}

/** Each kind of joint cut through, as contact angle, land, hole and lead make it. */
export function JointSections({ view }: { view: ProgrammeView }) {
  const rows = valueOf(view, leadHoles)
  const terms = termsOf(view)
  if (!rows || !terms) return null
  const shapes = rows.flatMap((row) => {
    const shape = orNothing(() => jointShapeOf(row, terms))
    return shape ? [{ row, shape }] : []
  })
  if (shapes.length === 0) return null
  return (
    <Section
      heading="Joints in section"
      lead="Drawn to scale from land, hole and lead at their nominal sizes, with the fillet that the contact angle gives."
    >
      <DrawnInPart all={shapes.length} />
      {shapes.slice(0, MAX_DRAWN).map(({ row, shape }, position) => (
        <Disclosure
          key={`${row.component} ${position}`}
          summary={`${row.component}: ${formatQuantity(shape.solderMm3, 'mm³', 3)} of solder`}
          open={position === 0}
        >
          <OneSection {...{ row, shape, terms }} />
        </Disclosure>
      ))}
    </Section>
  )
}

function termsOf(view: ProgrammeView): Terms | undefined {
  const boardMm = valueOf(view, boardThickness)
  const barrelUm = valueOf(view, barrelPlating)
  const grade = valueOf(view, productClass)
  if (boardMm === undefined || barrelUm === undefined || grade === undefined) return undefined
  const edition = valueOf(view, fillEdition)
  const editions = edition ? [edition] : (Object.keys(FILL_EDITIONS) as FillEdition[])
  const alloy = valueOf(view, solderAlloy)
  return {
    boardMm,
    barrelUm,
    angleDeg: valueOf(view, contactAngle) ?? DEFAULT_ANGLE_DEG,
    projectionMm: valueOf(view, leadProjection) ?? 0,
    densityGcm3: alloy && ALLOYS[alloy].densityGcm3,
    askedPct: (leadsEach) => fillAskedPct({ leadsEach, boardMm, grade }, editions),
  }
}

function OneSection({ row, shape, terms }: { row: LeadHole; shape: JointShape; terms: Terms }) {
  const asked = row.plated ? terms.askedPct(row.leadsEach) : 0
  return (
    <JointSection
      title={`${row.component}: joint in section`}
      landMm={row.landMm}
      holeMm={shape.hole.nominalMm}
      leadMm={shape.leadMm}
      boardMm={terms.boardMm}
      plated={row.plated}
      barrelMm={terms.barrelUm / 1000}
      projectionMm={terms.projectionMm}
      contactAngleDeg={terms.angleDeg}
      filletHeightMm={shape.fillet.heightMm}
      fillAsked={asked / 100}
      numbers={{
        columns: [{ label: 'Measure' }, { label: 'Value' }],
        rows: numbersOf(row, shape, terms, asked),
      }}
      note={noteOn(row, asked)}
    />
  )
}

function numbersOf(row: LeadHole, shape: JointShape, terms: Terms, asked: number): string[][] {
  const { fillet, barrelMm3, filletMm3, fillets, solderMm3 } = shape
  const mm3 = (value: number): string => formatQuantity(value, 'mm³', 3)
  const grams = terms.densityGcm3
  return [
    ['Outline of the fillet', fillet.shape],
    ['Fillet width', formatQuantity(fillet.widthMm, 'mm', 3)],
    ['Fillet height', formatQuantity(fillet.heightMm, 'mm', 3)],
    ['Contact angle', formatQuantity(terms.angleDeg, '°', 3)],
    [
      'Lead out of the fillet',
      formatQuantity(Number((terms.projectionMm - fillet.heightMm).toFixed(7)), 'mm', 3),
    ],
    ...(row.plated
      ? [
          [
            'Fill asked',
            asked === 0
              ? 'none'
              : `${formatQuantity(asked, '%', 3)}, ${formatQuantity((asked / 100) * terms.boardMm, 'mm', 3)}`,
          ],
          ['Solder in a full hole', mm3(barrelMm3)],
        ]
      : []),
    [fillets === 2 ? 'Each of two fillets' : 'The fillet', mm3(filletMm3)],
    ['Solder of the joint', mm3(solderMm3)],
    ...(grams === undefined
      ? []
      : [
          ['Mass of it', formatQuantity(solderMm3 * grams, 'mg', 3)],
          [`All ${row.joints} joints`, formatQuantity((row.joints * solderMm3 * grams) / 1000, 'g', 3)],
        ]),
  ]
}

function noteOn({ plated, leadShape }: LeadHole, asked: number): string {
  const lead = leadShape === 'round' ? '' : ' The lead is drawn as a round one of equal section.'
  if (!plated) return `No solder rises in an unplated hole.${lead}`
  if (asked >= 100 || asked === 0) return `Plating is drawn no thinner than can be seen.${lead}`
  return `Dashed: solder that the edition does not ask.${lead}`
}
