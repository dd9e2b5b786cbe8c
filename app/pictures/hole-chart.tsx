import { ClearanceDistribution } from '@/app/drawing/clearance-distribution'
import { LeadInHole } from '@/app/drawing/lead-in-hole'
import type { Lead, Toleranced } from '@/app/drawing/lead-geometry'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { radialClearance, clearanceShares } from '@/shared/physics/lead-clearance'
import { radialClearanceMin, radialClearanceMax } from '@/shared/plan/limits/lead-holes'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, toleranceSigmas, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { holeOf, leadOf } from '@/shared/holes/joint-row'
import { DrawnInPart, MAX_DRAWN } from './drawn-in-part'
import { orNothing, governingFor, valueOf } from './value-of'

/** Each kind of lead in its hole, to scale, with its clearance against the window. */
export function HoleChart({ view }: { view: ProgrammeView }) {
  const rows = valueOf(view, leadHoles)
  const barrelUm = valueOf(view, barrelPlating)
  if (!rows || barrelUm === undefined) return null
  const windowMm = {
    from: governingFor(view, radialClearanceMin).value,
    to: governingFor(view, radialClearanceMax).value,
  }
  const thickness = valueOf(view, boardThickness) ?? 1.6
  const sigmas = valueOf(view, toleranceSigmas) ?? 3
  const drawable = rows.filter((row) => isDrawable(row, barrelUm))
  if (drawable.length === 0) return null
  return (
    <Section heading="Hole chart" lead="Drawn to scale from the finished hole and the lead at their limits.">
      <DrawnInPart all={drawable.length} />
      {drawable.slice(0, MAX_DRAWN).map((row, position) => (
        <Disclosure
          key={`${row.component} ${position}`}
          summary={`${row.component}: lead in hole`}
          open={position === 0}
        >
          <JointPictures row={row} {...{ barrelUm, windowMm, thickness, sigmas }} />
        </Disclosure>
      ))}
    </Section>
  )
}

interface JointPicturesProps {
  row: LeadHole
  barrelUm: number
  windowMm: { from: number; to: number }
  thickness: number
  sigmas: number
}

function JointPictures({ row, barrelUm, windowMm, thickness, sigmas }: JointPicturesProps) {
  const hole = holeOf(row, barrelUm)
  const lead = leadOf(row)
  const radial = radialClearance(hole, lead)
  const shares = clearanceShares(hole, lead, { minMm: windowMm.from, maxMm: windowMm.to }, sigmas)
  const spread = (radial.rootSumSquare.maxMm - radial.rootSumSquare.minMm) / 2 / sigmas
  return (
    <div className="picture-row">
      <LeadInHole
        title={`${row.component}: lead in hole`}
        holeMm={{ min: hole.minMm, nominal: hole.nominalMm, greatest: hole.maxMm }}
        lead={drawnLead(row)}
        landDiameterMm={row.landMm}
        boardThicknessMm={thickness}
        plated={row.plated}
        copperMm={barrelUm / 1000}
        clearance={{
          minMm: radial.worstCase.minMm,
          nominalMm: radial.nominalMm,
          greatestMm: radial.worstCase.maxMm,
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
const isDrawable = (row: LeadHole, barrelUm: number): boolean =>
  orNothing(() => {
    const gap = radialClearance(holeOf(row, barrelUm), leadOf(row))
    return gap.nominalMm > 0 && row.landMm > holeOf(row, barrelUm).nominalMm
  }) ?? false

function drawnLead(row: LeadHole): Lead {
  const sized = (nominal: number): Toleranced => ({
    min: nominal - row.leadToleranceMm,
    nominal,
    greatest: nominal + row.leadToleranceMm,
  })
  if (row.leadShape === 'round') return { form: 'round', diameterMm: sized(row.leadMm) }
  if (row.leadShape === 'square') return { form: 'square', sideMm: sized(row.leadMm) }
  return { form: 'flat', widthMm: sized(row.leadMm), thicknessMm: sized(row.leadThicknessMm ?? row.leadMm) }
}
