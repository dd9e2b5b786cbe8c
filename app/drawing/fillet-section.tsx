import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { AcrossDimension, arrow, UprightDimension } from './dimension'
import { Drawing } from './drawing'
import { filletProfile } from './fillet-profile'
import { hatchRectangle } from './hatch-rectangle'

type FilletSectionProps = {
  title: string
  padDiameterMm: number
  holeDiameterMm: number
  leadDiameterMm: number
  boardThicknessMm: number
  /** Between lead and solder, through the solder. */
  contactAngleDeg: number
  /** Height of the fillet on the lead; as high as it is wide unless given. */
  filletHeightMm?: number
}

const WIDTH = 440
const AXIS = 214
const BOARD_HEIGHT = 92

/** A soldered joint cut through: the fillet as an arc that meets the lead at its contact angle. To scale but for the board's depth. */
export function FilletSection(props: FilletSectionProps) {
  const { title, padDiameterMm, holeDiameterMm, leadDiameterMm, boardThicknessMm, contactAngleDeg } = props
  const heightMm = props.filletHeightMm ?? (padDiameterMm - leadDiameterMm) / 2
  const profile = filletProfile({
    padRadiusMm: padDiameterMm / 2,
    leadRadiusMm: leadDiameterMm / 2,
    heightMm,
    contactAngleDeg,
  })
  const scale = Math.min(200 / padDiameterMm, 120 / heightMm)
  const [pad, hole, lead] = [padDiameterMm, holeDiameterMm, leadDiameterMm].map((mm) => (mm / 2) * scale) as [
    number,
    number,
    number,
  ]
  const rise = heightMm * scale
  const radius = profile.radiusMm * scale
  const reach = profile.shape === 'convex' ? Math.max(0, radius - pad / 2) : 0
  const top = 58 + rise + reach / 2
  const bottom = top + BOARD_HEIGHT
  const [edge, far] = [AXIS - pad - 40, AXIS + pad + 40]
  const side = (sign: 1 | -1) => filletSide(sign, { pad, lead, rise, top, radius, profile })
  return (
    <Drawing
      title={title}
      description={`Joint in section: ${profile.shape} fillet, contact angle ${formatNumber(contactAngleDeg, 3)}° at the lead, ${formatQuantity(heightMm, 'mm', 3)} high on a land of ${formatQuantity(padDiameterMm, 'mm', 3)}.`}
      width={WIDTH}
      height={bottom + 58}
      size="narrow"
      numbersPlace="beside"
      numbers={{
        columns: [{ label: 'Measure' }, { label: 'Value' }],
        rows: [
          ['Land', formatQuantity(padDiameterMm, 'mm', 3)],
          ['Hole', formatQuantity(holeDiameterMm, 'mm', 3)],
          ['Lead', formatQuantity(leadDiameterMm, 'mm', 3)],
          ['Board', formatQuantity(boardThicknessMm, 'mm', 3)],
          ['Contact angle at the lead', formatQuantity(contactAngleDeg, '°', 3)],
          ['Fillet height', formatQuantity(heightMm, 'mm', 3)],
          ['Outline', profile.shape],
        ],
      }}
      note="Outline drawn as an arc of a circle; the board's depth is not to scale."
    >
      <path
        className="fill-solder"
        stroke="var(--color-ink)"
        strokeWidth="1.4"
        d={`M${AXIS - hole} ${bottom}H${AXIS + hole}V${top}H${AXIS + pad}${side(1)}H${AXIS - lead}${side(-1)}H${AXIS - hole}Z`}
      />
      <path
        className="fill-laminate"
        d={`M${edge} ${top}H${AXIS - hole}V${bottom}H${edge}ZM${AXIS + hole} ${top}H${far}V${bottom}H${AXIS + hole}Z`}
      />
      <path
        className="line-hatch"
        d={
          hatchRectangle(edge, top, AXIS - hole - edge, BOARD_HEIGHT, 12) +
          hatchRectangle(AXIS + hole, top, far - AXIS - hole, BOARD_HEIGHT, 12)
        }
      />
      <path
        className="line-seen"
        d={`M${edge} ${top}H${AXIS - hole}V${bottom}H${edge}M${far} ${top}H${AXIS + hole}V${bottom}H${far}`}
      />
      {[-1, 1].map((sign) => (
        <path
          key={sign}
          className="fill-copper-bright"
          stroke="var(--color-ink)"
          d={`M${AXIS + sign * hole} ${top}H${AXIS + sign * pad}v4H${AXIS + sign * (hole + 4)}V${bottom - 4}H${AXIS + sign * pad}v4H${AXIS + sign * hole}Z`}
        />
      ))}
      <path
        className="fill-lead"
        stroke="var(--color-ink)"
        strokeWidth="1.7"
        d={`M${AXIS - lead} ${top - rise - 26}h${2 * lead}V${bottom + 16}h${-2 * lead}Z`}
      />
      <path className="line-chain" d={`M${AXIS} ${top - rise - 40}V${bottom + 26}`} />
      <AngleMark x={AXIS + lead} y={top - rise} angleDeg={contactAngleDeg} />
      <UprightDimension
        from={top - rise}
        to={top}
        x={edge - 12}
        start={AXIS - lead - 4}
        text={heightMm.toFixed(2)}
      />
      <AcrossDimension
        from={AXIS - pad}
        to={AXIS + pad}
        y={bottom + 40}
        start={bottom + 4}
        text={`land ⌀${padDiameterMm.toFixed(2)}`}
      />
    </Drawing>
  )
}

type SideProps = {
  pad: number
  lead: number
  rise: number
  top: number
  radius: number
  profile: ReturnType<typeof filletProfile>
}

/** Path from the land's edge up to the lead at the right, or down again at the left. */
function filletSide(sign: 1 | -1, { pad, lead, rise, top, radius, profile }: SideProps): string {
  const end = sign === 1 ? `${AXIS + lead} ${top - rise}` : `${AXIS - pad} ${top}`
  if (profile.shape === 'straight') return `L${end}`
  const sweep = profile.shape === 'concave' ? 1 : 0
  return `A${radius} ${radius} 0 ${profile.large ? 1 : 0} ${sweep} ${end}`
}

/** The contact angle: the lead's side downwards, the surface's tangent, and the arc between. */
function AngleMark({ x, y, angleDeg }: { x: number; y: number; angleDeg: number }) {
  const angle = (angleDeg * Math.PI) / 180
  const [length, arc] = [74, 50]
  const tangent = { x: x + length * Math.sin(angle), y: y + length * Math.cos(angle) }
  const end = { x: x + arc * Math.sin(angle), y: y + arc * Math.cos(angle) }
  return (
    <g>
      <path
        className="line-thin"
        d={`M${x} ${y}L${tangent.x} ${tangent.y}M${x} ${y + arc}A${arc} ${arc} 0 0 0 ${end.x} ${end.y}`}
      />
      <text x={x + 14} y={y - (angleDeg > 60 ? 32 : 8)} className="text-haloed">
        θ = {formatQuantity(angleDeg, '°', 3)}
      </text>
      <path className="fill-ink" d={angleDeg > 25 ? arrow(x, y + arc, 'left') : ''} />
    </g>
  )
}
