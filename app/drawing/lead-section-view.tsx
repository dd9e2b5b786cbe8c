import { CutLaminate } from './cut-laminate'
import { AcrossDimension, UprightDimension } from './dimension'
import { landAndBarrel } from './joint-section-outline'
import { AXIS, leadSides, tolerancedText, type LeadAndHole } from './lead-geometry'

/** Height of the board's upper side, and how much of the lead stands out of it. */
export const SECTION_TOP = 84
export const STUB = 30

type ViewProps = LeadAndHole & { scale: number }

/** Board, plated hole and lead cut through along the axis, with their dimensions. */
export function SectionView({
  holeMm,
  lead,
  landDiameterMm,
  boardThicknessMm,
  plated = true,
  copperMm = 0.03,
  scale,
}: ViewProps) {
  const half = (mm: number) => (mm / 2) * scale
  const [hole, land, top] = [half(holeMm.nominal), half(landDiameterMm), SECTION_TOP]
  const bottom = top + boardThicknessMm * scale
  const copper = Math.max(3, copperMm * scale)
  const { across } = leadSides(lead)
  const wide = half(across.nominal)
  const [edge, far] = [AXIS - land - 26, AXIS + land + 26]
  const wall = plated ? hole + copper : hole
  return (
    <g>
      <CutLaminate axis={AXIS} open={wall} reach={land + 26} top={top} bottom={bottom} />
      <path className="line-seen" d={`M${edge} ${top}H${far}M${edge} ${bottom}H${far}`} />
      {!plated && (
        <path className="line-seen" d={`M${AXIS - hole} ${top}V${bottom}M${AXIS + hole} ${top}V${bottom}`} />
      )}
      <path className="line-thin" d={breakLine(edge, top, bottom) + breakLine(far, top, bottom)} />
      {([-1, 1] as const).map((side) => (
        <path
          key={side}
          className="fill-copper-bright"
          stroke="var(--color-ink)"
          strokeWidth="1.2"
          d={landAndBarrel({ axis: AXIS, land, hole }, side, { top, bottom, copper, plated })}
        />
      ))}
      <Band from={half(holeMm.min)} to={half(holeMm.greatest)} top={top - copper} bottom={bottom + copper} />
      <path
        className="fill-lead"
        d={`M${AXIS - wide} ${top - STUB}h${2 * wide}V${bottom + STUB}h${-2 * wide}Z`}
      />
      <path
        className="line-seen"
        d={`M${AXIS - wide} ${top - STUB}V${bottom + STUB}M${AXIS + wide} ${top - STUB}V${bottom + STUB}`}
      />
      <Band from={half(across.min)} to={half(across.greatest)} top={top - STUB} bottom={bottom + STUB} />
      <path
        className="line-thin"
        d={freehand(AXIS - wide, AXIS + wide, top - STUB) + freehand(AXIS - wide, AXIS + wide, bottom + STUB)}
      />
      <AcrossDimension
        from={AXIS - wide}
        to={AXIS + wide}
        y={top - STUB - 10}
        start={top - STUB - 2}
        text={tolerancedText(across, lead.form === 'round' ? '⌀' : '')}
      />
      <AcrossDimension
        from={AXIS - hole}
        to={AXIS + hole}
        y={18}
        start={top - copper - 2}
        text={`hole ${tolerancedText(holeMm, '⌀')}`}
      />
      <UprightDimension
        from={top}
        to={bottom}
        x={edge - 22}
        start={edge - 5}
        text={boardThicknessMm.toFixed(2)}
      />
    </g>
  )
}

/** A tolerance: the two bounds dashed at both sides of the axis. */
function Band({ from, to, top, bottom }: { from: number; to: number; top: number; bottom: number }) {
  if (to - from < 0.5) return null
  const sides = [-to, -from, from, to].map((reach) => `M${AXIS + reach} ${top}V${bottom}`)
  return <path className="line-bound" d={sides.join('')} />
}

/** The zigzag of a part broken off, upright. */
const breakLine = (x: number, top: number, bottom: number): string => {
  const middle = (top + bottom) / 2
  return `M${x} ${top - 5}V${middle - 7}l-5 4l10 6l-5 4V${bottom + 5}`
}

/** The wavy end of a lead broken off. */
const freehand = (left: number, right: number, y: number): string => {
  const quarter = (right - left) / 4
  return `M${left} ${y}q${quarter} -6 ${2 * quarter} 0t${2 * quarter} 0`
}
