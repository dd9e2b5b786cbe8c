import type { ReactNode } from 'react'
import { formatQuantity } from '@/shared/quantity/format'
import { CutLaminate } from './cut-laminate'
import { AcrossDimension, UprightDimension } from './dimension'
import { Drawing } from './drawing'
import { filletProfile } from './fillet-profile'
import { filletPaths, landAndBarrel, type JointOutline } from './joint-section-outline'
import type { Numbers } from './numbers-table'

export type JointSectionProps = {
  title: string
  landMm: number
  /** Finished. */
  holeMm: number
  /** A round lead of the same section. */
  leadMm: number
  boardMm: number
  plated: boolean
  /** Metal on the wall; drawn at least thick enough to see, on the lands too. */
  barrelMm: number
  /** How far the lead stands out on the solder side. */
  projectionMm: number
  contactAngleDeg: number
  filletHeightMm: number
  /** The least fill asked, as a share of the board's thickness. */
  fillAsked: number
  numbers: Numbers
  note?: ReactNode
}

const WIDTH = 440
const AXIS = 228
const STUB = 30

/** A soldered joint cut through, to scale: fillets as arcs that meet lead and land at the contact angle, solder side below. */
export function JointSection(props: JointSectionProps) {
  const { title, landMm, boardMm, plated, contactAngleDeg, filletHeightMm, projectionMm, numbers, note } =
    props
  const below = Math.max(projectionMm, filletHeightMm)
  const scale = Math.min(200 / landMm, 340 / (boardMm + filletHeightMm * (plated ? 1 : 0) + below))
  const outline = outlineOf(props, scale)
  const copper = Math.max(3, props.barrelMm * scale)
  const top = 40 + STUB + (plated ? outline.rise : 0)
  const bottom = top + boardMm * scale
  const floor = bottom + copper + below * scale
  const start = top - (plated ? outline.rise : 0) - STUB
  const sides = { outline, copper, top, bottom }
  return (
    <Drawing
      title={title}
      description={`Joint in section, solder side below, to scale: fillet ${formatQuantity(filletHeightMm, 'mm', 3)} high on a land of ${formatQuantity(landMm, 'mm', 3)}, contact angle ${formatQuantity(contactAngleDeg, '°', 3)} at lead and land${plated ? `; at least ${formatQuantity(props.fillAsked * 100, '%', 3)} of the hole filled` : '; the hole is not plated and is not filled'}.`}
      width={WIDTH}
      height={floor + 74}
      size="narrow"
      numbersPlace="beside"
      numbers={numbers}
      note={note}
    >
      <Board {...sides} />
      <Solder {...sides} props={props} />
      {([-1, 1] as const).map((side) => (
        <path
          key={side}
          className="fill-copper-bright"
          stroke="var(--color-ink)"
          strokeWidth="1.2"
          d={landAndBarrel(outline, side, { top, bottom, copper, plated })}
        />
      ))}
      <Lead outline={outline} start={start} end={bottom + copper + projectionMm * scale} />
      <path className="line-chain" d={`M${AXIS} ${start - 8}V${floor + 14}`} />
      <Measures {...sides} props={props} floor={floor} scale={scale} />
    </Drawing>
  )
}

function outlineOf(props: JointSectionProps, scale: number): JointOutline {
  const profile = filletProfile({
    padRadiusMm: props.landMm / 2,
    leadRadiusMm: props.leadMm / 2,
    heightMm: props.filletHeightMm,
    contactAngleDeg: props.contactAngleDeg,
  })
  const half = (mm: number) => (mm / 2) * scale
  return {
    axis: AXIS,
    land: half(props.landMm),
    hole: half(props.holeMm),
    lead: half(props.leadMm),
    radius: profile.radiusMm * scale,
    concave: profile.shape === 'concave',
    rise: props.filletHeightMm * scale,
  }
}

interface Sides {
  outline: JointOutline
  copper: number
  top: number
  bottom: number
}

function Board({ outline, top, bottom }: Sides) {
  const { land, hole } = outline
  const [edge, far] = [AXIS - land - 30, AXIS + land + 30]
  return (
    <g>
      <CutLaminate axis={AXIS} open={hole} reach={land + 30} top={top} bottom={bottom} />
      <path
        className="line-seen"
        d={`M${edge} ${top}H${AXIS - hole}V${bottom}H${edge}M${far} ${top}H${AXIS + hole}V${bottom}H${far}`}
      />
    </g>
  )
}

/** What must be there is solid; what an edition lets be missing is drawn in dashes only. */
function Solder({ outline, copper, top, bottom, props }: Sides & { props: JointSectionProps }) {
  const { hole } = outline
  const { plated, fillAsked, boardMm } = props
  const level = bottom - Math.min(1, fillAsked) * (bottom - top)
  const full = fillAsked >= 1
  const [lower, upper] = [
    filletPaths(outline, bottom + copper, 'down'),
    filletPaths(outline, top - copper, 'up'),
  ]
  return (
    <g>
      <path className="fill-solder" d={plated && full ? lower.area + upper.area : lower.area} />
      <path className="line-seen" d={plated && full ? lower.surface + upper.surface : lower.surface} />
      {plated && !full && <path className="line-bound" d={upper.surface} />}
      {plated && (
        <path
          className="fill-solder"
          d={`M${AXIS - hole} ${full ? top - copper : level}H${AXIS + hole}V${bottom + copper}H${AXIS - hole}Z`}
        />
      )}
      {plated && !full && fillAsked > 0 && (
        <g>
          <path className="line-bound" d={`M${AXIS - hole} ${level}H${AXIS + outline.land + 44}`} />
          <text x={WIDTH - 4} y={level - 5} textAnchor="end" className="text-haloed">
            fill ≥ {formatQuantity(fillAsked * boardMm, 'mm', 3)}
          </text>
        </g>
      )}
    </g>
  )
}

function Lead({ outline, start, end }: Pick<Sides, 'outline'> & { start: number; end: number }) {
  const { lead } = outline
  return (
    <g>
      <path className="fill-lead" d={`M${AXIS - lead} ${start}h${2 * lead}V${end}h${-2 * lead}Z`} />
      <path className="line-seen" d={`M${AXIS - lead} ${start}V${end}H${AXIS + lead}V${start}`} />
      <path className="line-thin" d={`M${AXIS - lead} ${start}q${lead / 2} -6 ${lead} 0t${lead} 0`} />
    </g>
  )
}

type MeasuresProps = Sides & { props: JointSectionProps; floor: number; scale: number }

function Measures({ outline, copper, top, bottom, props, floor, scale }: MeasuresProps) {
  const { land, hole, lead, rise } = outline
  const face = bottom + copper
  const edge = AXIS - land - 30
  return (
    <g>
      <AcrossDimension
        from={AXIS - hole}
        to={AXIS + hole}
        y={20}
        start={top - 2}
        text={`hole ⌀${props.holeMm.toFixed(2)}`}
      />
      <AcrossDimension
        from={AXIS - lead}
        to={AXIS + lead}
        y={floor + 26}
        start={face + props.projectionMm * scale + 2}
        text={`lead ⌀${props.leadMm.toFixed(2)}`}
      />
      <AcrossDimension
        from={AXIS - land}
        to={AXIS + land}
        y={floor + 54}
        start={face + 2}
        text={`land ⌀${props.landMm.toFixed(2)}`}
      />
      <UprightDimension
        from={top}
        to={bottom}
        x={edge - 20}
        start={edge - 4}
        text={props.boardMm.toFixed(2)}
      />
      <UprightDimension
        from={face}
        to={face + rise}
        x={edge - 20}
        start={AXIS - lead - 3}
        text={props.filletHeightMm.toFixed(2)}
      />
      {props.projectionMm > 0 && (
        <UprightDimension
          from={face}
          to={face + props.projectionMm * scale}
          x={AXIS + land + 62}
          start={AXIS + lead + 3}
          text={`out ${props.projectionMm.toFixed(2)}`}
        />
      )}
      <ContactAngle x={AXIS + lead} y={face + rise} angleDeg={props.contactAngleDeg} />
      <g transform={`translate(14 ${floor + 58})`}>
        <path className="line-seen" d={`M0 -4V4M0 0H${0.5 * scale}M${0.5 * scale} -4V4`} />
        <text y={-9} className="text-soft text-small">
          0.5 mm
        </text>
      </g>
    </g>
  )
}

/** The contact angle at the lead, through the solder: the lead's side upwards, the surface's tangent, and the arc between. */
function ContactAngle({ x, y, angleDeg }: { x: number; y: number; angleDeg: number }) {
  const angle = (angleDeg * Math.PI) / 180
  const [length, arc] = [64, 46]
  return (
    <g>
      <path
        className="line-thin"
        d={`M${x} ${y}L${x + length * Math.sin(angle)} ${y - length * Math.cos(angle)}M${x} ${y - arc}A${arc} ${arc} 0 0 1 ${x + arc * Math.sin(angle)} ${y - arc * Math.cos(angle)}`}
      />
      <text x={x + 12} y={y + 6} className="text-haloed">
        θ = {formatQuantity(angleDeg, '°', 3)}
      </text>
    </g>
  )
}
