import { ClearanceDistribution } from '@/app/drawing/clearance-distribution'
import { LeadInHole } from '@/app/drawing/lead-in-hole'
import type { Lead, Toleranced } from '@/app/drawing/lead-geometry'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { radialClearance, clearanceShares } from '@/shared/physics/lead-clearance'
import { radialClearanceLeast, radialClearanceMost } from '@/shared/plan/limits/lead-holes'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { holeWall, leadHoles, toleranceSigmas, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { rulingOn } from '@/shared/plan/requirement'
import { hasTwoSides, holeOf, leadOf } from '@/shared/rules/specification/joint-row'

/** Each kind of lead in its hole, to scale, with its clearance against the window. */
export function HoleChart({ view }: { view: ProgrammeView }) {
  const { values, requirements } = view.state.facts
  const rows = values.get(leadHoles.key) as readonly LeadHole[] | undefined
  const wallUm = values.get(holeWall.key) as number | undefined
  if (!rows || wallUm === undefined) return null
  const windowMm = {
    from: rulingOn(radialClearanceLeast, requirements).value,
    to: rulingOn(radialClearanceMost, requirements).value,
  }
  const thickness = (values.get(boardThickness.key) as number | undefined) ?? 1.6
  const sigmas = (values.get(toleranceSigmas.key) as number | undefined) ?? 3
  return (
    <Section heading="Hole chart" lead="Drawn to scale from the finished hole and the lead at their limits.">
      {rows.filter(isDrawable).map((row, position) => (
        <Disclosure
          key={`${row.component} ${position}`}
          summary={`${row.component}: lead in hole`}
          open={position === 0}
        >
          <JointPictures row={row} {...{ wallUm, windowMm, thickness, sigmas }} />
        </Disclosure>
      ))}
    </Section>
  )
}

interface JointPicturesProps {
  row: LeadHole
  wallUm: number
  windowMm: { from: number; to: number }
  thickness: number
  sigmas: number
}

function JointPictures({ row, wallUm, windowMm, thickness, sigmas }: JointPicturesProps) {
  const hole = holeOf(row, wallUm)
  const lead = leadOf(row)
  const radial = radialClearance(hole, lead)
  const shares = clearanceShares(hole, lead, { leastMm: windowMm.from, mostMm: windowMm.to }, sigmas)
  const spread = (radial.rootSumSquare.mostMm - radial.rootSumSquare.leastMm) / 2 / sigmas
  return (
    <div className="picture-row">
      <LeadInHole
        title={`${row.component}: lead in hole`}
        holeMm={{ least: hole.leastMm, nominal: hole.nominalMm, greatest: hole.mostMm }}
        lead={drawnLead(row)}
        landDiameterMm={row.landMm}
        boardThicknessMm={thickness}
        copperMm={row.plated ? wallUm / 1000 : undefined}
        clearance={{
          leastMm: radial.worstCase.leastMm,
          nominalMm: radial.nominalMm,
          greatestMm: radial.worstCase.mostMm,
          windowMm,
        }}
      />
      {spread > 0 && (
        <ClearanceDistribution
          title={`${row.component}: radial clearance as it scatters`}
          meanMm={radial.nominalMm}
          standardDeviationMm={spread}
          windowMm={windowMm}
          shares={{ below: shares.below, inside: shares.within, above: shares.above }}
        />
      )}
    </div>
  )
}

/** A row whose numbers contradict each other is told by the finding, not drawn. */
const isDrawable = (row: LeadHole): boolean => !hasTwoSides(row) || row.leadThicknessMm !== undefined

function drawnLead(row: LeadHole): Lead {
  const sized = (nominal: number): Toleranced => ({
    least: nominal - row.leadToleranceMm,
    nominal,
    greatest: nominal + row.leadToleranceMm,
  })
  if (row.leadShape === 'round') return { form: 'round', diameterMm: sized(row.leadMm) }
  if (row.leadShape === 'square') return { form: 'square', sideMm: sized(row.leadMm) }
  return { form: 'flat', widthMm: sized(row.leadMm), thicknessMm: sized(row.leadThicknessMm ?? row.leadMm) }
}
