import { AcrossDimension } from './dimension'
import { AXIS, leadSides, type Lead, type LeadAndHole, type Toleranced } from './lead-geometry'

/** Land, hole and lead from above, centred at a height, with the land's dimension. */
export function PlanView({
  holeMm,
  lead,
  landDiameterMm,
  scale,
  y,
}: LeadAndHole & { scale: number; y: number }) {
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
      <circle cx={AXIS} cy={y} r={half(holeMm.min)} className="line-bound" />
      <LeadOutline lead={lead} size="nominal" scale={scale} y={y} className="lead-cut" />
      <LeadOutline lead={lead} size="greatest" scale={scale} y={y} className="line-bound" />
      <LeadOutline lead={lead} size="min" scale={scale} y={y} className="line-bound" />
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
