import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { ClearanceGauge, type ClearanceGaugeProps } from './clearance-gauge'
import { AcrossDimension, UprightDimension } from './dimension'
import { Drawing } from './drawing'
import { hatchRectangle } from './hatch-rectangle'
import { leadSides, tolerancedText, type Lead, type Toleranced } from './lead-geometry'

type LeadInHoleProps = {
  title: string
  /** The hole as finished, after plating. */
  holeMm: Toleranced
  lead: Lead
  landDiameterMm: number
  boardThicknessMm: number
  /** Plating on the wall of the hole, and copper of the land; drawn at least thick enough to see. */
  copperMm?: number
  clearance: ClearanceGaugeProps
}

const WIDTH = 440
const AXIS = 234
const SECTION_TOP = 84
const STUB = 30

/** Section over plan on one axis, both to one scale, and the clearance gauged against its window. */
export function LeadInHole(props: LeadInHoleProps) {
  const { title, holeMm, lead, landDiameterMm, boardThicknessMm, clearance } = props
  const scale = Math.min(210 / landDiameterMm, 190 / boardThicknessMm)
  const boardBottom = SECTION_TOP + boardThicknessMm * scale
  const planY = boardBottom + STUB + 34 + (landDiameterMm / 2) * scale
  const gaugeY = planY + (landDiameterMm / 2) * scale + 66
  return (
    <Drawing
      title={title}
      description={`A ${lead.form} lead in a plated hole, in section and from above, to scale. Radial clearance ${formatNumber(clearance.leastMm, 3)} to ${formatQuantity(clearance.greatestMm, 'mm', 3)} against a window of ${clearance.windowMm.from} to ${clearance.windowMm.to} mm.`}
      width={WIDTH}
      height={gaugeY + 68}
      size="narrow"
      numbersPlace="beside"
      numbers={numbersOf(props)}
    >
      <SectionView {...props} scale={scale} />
      <PlanView {...props} scale={scale} y={planY} />
      <path
        className="line-chain"
        d={`M${AXIS} ${SECTION_TOP - STUB - 8}V${planY + (landDiameterMm / 2) * scale + 12}`}
      />
      <g transform={`translate(0 ${gaugeY})`}>
        <ClearanceGauge {...clearance} />
      </g>
      <g transform={`translate(14 ${planY + (landDiameterMm / 2) * scale - 4})`}>
        <path className="line-seen" d={`M0 -4V4M0 0H${0.5 * scale}M${0.5 * scale} -4V4`} />
        <text y={-9} className="text-soft text-small">
          0.5 mm
        </text>
      </g>
    </Drawing>
  )
}

type ViewProps = LeadInHoleProps & { scale: number }

function SectionView({ holeMm, lead, landDiameterMm, boardThicknessMm, copperMm = 0.03, scale }: ViewProps) {
  const half = (mm: number) => (mm / 2) * scale
  const [hole, land, top] = [half(holeMm.nominal), half(landDiameterMm), SECTION_TOP]
  const bottom = top + boardThicknessMm * scale
  const copper = Math.max(3, copperMm * scale)
  const { across } = leadSides(lead)
  const wide = half(across.nominal)
  const [edge, far] = [AXIS - land - 26, AXIS + land + 26]
  const wall = hole + copper
  return (
    <g>
      <path
        className="fill-laminate"
        d={`M${edge} ${top}H${AXIS - wall}V${bottom}H${edge}ZM${far} ${top}H${AXIS + wall}V${bottom}H${far}Z`}
      />
      <path
        className="line-hatch"
        d={
          hatchRectangle(edge, top, AXIS - wall - edge, bottom - top, 12) +
          hatchRectangle(AXIS + wall, top, far - AXIS - wall, bottom - top, 12)
        }
      />
      <path className="line-seen" d={`M${edge} ${top}H${far}M${edge} ${bottom}H${far}`} />
      <path className="line-thin" d={breakLine(edge, top, bottom) + breakLine(far, top, bottom)} />
      {[-1, 1].map((side) => (
        <path
          key={side}
          className="fill-copper-bright"
          stroke="var(--color-ink)"
          strokeWidth="1.2"
          d={`M${AXIS + side * hole} ${top - copper}H${AXIS + side * land}v${copper}H${AXIS + side * wall}V${bottom}H${AXIS + side * land}v${copper}H${AXIS + side * hole}Z`}
        />
      ))}
      <Band
        from={half(holeMm.least)}
        to={half(holeMm.greatest)}
        top={top - copper}
        bottom={bottom + copper}
      />
      <path
        className="fill-lead"
        d={`M${AXIS - wide} ${top - STUB}h${2 * wide}V${bottom + STUB}h${-2 * wide}Z`}
      />
      <path
        className="line-seen"
        d={`M${AXIS - wide} ${top - STUB}V${bottom + STUB}M${AXIS + wide} ${top - STUB}V${bottom + STUB}`}
      />
      <Band from={half(across.least)} to={half(across.greatest)} top={top - STUB} bottom={bottom + STUB} />
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

function PlanView({ holeMm, lead, landDiameterMm, scale, y }: ViewProps & { y: number }) {
  const half = (mm: number) => (mm / 2) * scale
  const land = half(landDiameterMm)
  return (
    <g>
      <circle
        cx={AXIS}
        cy={y}
        r={land}
        className="fill-copper-bright"
        stroke="var(--color-ink)"
        strokeWidth="1.7"
      />
      <circle
        cx={AXIS}
        cy={y}
        r={half(holeMm.nominal)}
        className="fill-sheet"
        stroke="var(--color-ink)"
        strokeWidth="1.7"
      />
      <circle cx={AXIS} cy={y} r={half(holeMm.greatest)} className="line-bound" />
      <circle cx={AXIS} cy={y} r={half(holeMm.least)} className="line-bound" />
      <LeadOutline lead={lead} size="nominal" scale={scale} y={y} className="lead-cut" />
      <LeadOutline lead={lead} size="greatest" scale={scale} y={y} className="line-bound" />
      <LeadOutline lead={lead} size="least" scale={scale} y={y} className="line-bound" />
      <path className="line-chain" d={`M${AXIS - land - 12} ${y}H${AXIS + land + 12}`} />
      <AcrossDimension
        from={AXIS - land}
        to={AXIS + land}
        y={y + land + 30}
        start={y + 2}
        text={`land ⌀${landDiameterMm.toFixed(2)}`}
      />
    </g>
  )
}

type LeadOutlineProps = { lead: Lead; size: keyof Toleranced; scale: number; y: number; className: string }

function LeadOutline({ lead, size, scale, y, className }: LeadOutlineProps) {
  const { across, deep } = leadSides(lead)
  const [wide, high] = [across[size] * scale, deep[size] * scale]
  if (lead.form === 'round') return <circle cx={AXIS} cy={y} r={wide / 2} className={className} />
  return <rect x={AXIS - wide / 2} y={y - high / 2} width={wide} height={high} className={className} />
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

function numbersOf({ holeMm, lead, landDiameterMm, boardThicknessMm, clearance }: LeadInHoleProps) {
  const { across, deep } = leadSides(lead)
  const row = (name: string, { least, nominal, greatest }: Toleranced) => [
    name,
    ...[least, nominal, greatest].map((mm) => formatQuantity(mm, 'mm', 3)),
  ]
  return {
    columns: [{ label: 'Measure' }, { label: 'Least' }, { label: 'Nominal' }, { label: 'Greatest' }],
    rows: [
      row('Finished hole', holeMm),
      row(
        lead.form === 'round' ? 'Lead diameter' : lead.form === 'square' ? 'Lead side' : 'Lead width',
        across,
      ),
      ...(lead.form === 'flat' ? [row('Lead thickness', deep)] : []),
      ['Land', '', formatQuantity(landDiameterMm, 'mm', 3), ''],
      ['Board', '', formatQuantity(boardThicknessMm, 'mm', 3), ''],
      row('Radial clearance', {
        least: clearance.leastMm,
        nominal: clearance.nominalMm,
        greatest: clearance.greatestMm,
      }),
      [
        'Clearance window',
        formatQuantity(clearance.windowMm.from, 'mm', 3),
        '',
        formatQuantity(clearance.windowMm.to, 'mm', 3),
      ],
    ],
  }
}
