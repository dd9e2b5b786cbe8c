import { dropOf, type SectionPoint } from '@/shared/physics/solder-meniscus'
import type { DefectScene } from './defect-scene'
import { GUIDE_JOINT as JOINT } from './defect-fillet'
import { LAND_Y, SCALE, x, y } from './defect-place'

interface DefectDetailProps {
  also: NonNullable<DefectScene['also']>
  /** Axis of the (left) joint, mm. */
  origin: number
  surface: readonly SectionPoint[]
}

/** What a kind of defect shows beside its fillet. */
export function DefectDetail({ also, origin, surface }: DefectDetailProps) {
  switch (also) {
    case 'neighbour bridged':
      return <Solder d={bridge(origin)} />
    case 'neighbour and ball':
      return <Solder d={drop(-0.03, 0.014, 150)} />
    case 'point':
      return <Solder d={icicle(origin)} />
    case 'drops on the land':
      return (
        <Solder
          d={[-1, 1].map((side) => film(origin, side) + drop(origin + side * 0.78, 0.004, 65)).join('')}
        />
      )
    case 'blowhole':
      return <Cavity d={blowhole(origin, surface)} />
    case 'void':
      return <Cavity d={ring(origin + 0.388, -0.5, 0.075) + ring(origin - 0.388, -0.82, 0.055)} />
    case 'crack':
      return <path className="line-limit" strokeWidth="2" d={crack(origin)} />
    case 'lifted land':
    case 'bare land':
      return null
  }
}

const Solder = ({ d }: { d: string }) => (
  <path className="fill-solder" stroke="var(--color-ink)" strokeWidth="1.4" d={d} />
)
const Cavity = ({ d }: { d: string }) => (
  <path className="fill-sheet" stroke="var(--color-ink)" strokeWidth="1.4" d={d} />
)

/** Between two leads: above, an arc that meets both at one angle and sags between; below, one that hangs from the lands. */
function bridge(origin: number): string {
  const [from, to] = [origin + JOINT.leadRadiusMm, origin + JOINT.pitchMm - JOINT.leadRadiusMm]
  const half = ((to - from) / 2) * SCALE
  const upper = half / Math.cos((35 * Math.PI) / 180)
  const top = y(0.78)
  const feet = [x(origin + JOINT.landRadiusMm), x(origin + JOINT.pitchMm - JOINT.landRadiusMm)] as const
  return `M${x(from)} ${top}A${upper} ${upper} 0 0 0 ${x(to)} ${top}V${y(0)}H${feet[1]}Q${(feet[0] + feet[1]) / 2} ${y(0.1)} ${feet[0]} ${y(0)}H${x(from)}Z`
}

/** A skin of solder over the lead, drawn out to a point beyond its end. */
function icicle(origin: number): string {
  const [left, right, top] = [x(origin - 0.3), x(origin + 0.3), y(JOINT.leadOutMm)]
  const [foot, tip] = [y(0.55), y(JOINT.leadOutMm + 0.68)]
  return `M${left} ${foot}C${left - 6} ${y(0.9)} ${left - 7} ${top - 8} ${x(origin) + 1} ${tip}C${right + 5} ${top - 10} ${right + 7} ${y(0.9)} ${right} ${foot}V${top}H${left}Z`
}

/** A drop of so much solder, standing at its contact angle on the land or on the mask. */
function drop(axisMm: number, volumeMm3: number, angleDeg: number): string {
  const { baseRadiusMm, sphereRadiusMm } = dropOf(volumeMm3, angleDeg)
  const radius = sphereRadiusMm * SCALE
  const level = angleDeg > 90 ? LAND_Y : y(0)
  return `M${x(axisMm - baseRadiusMm)} ${level}A${radius} ${radius} 0 ${angleDeg > 90 ? 1 : 0} 1 ${x(axisMm + baseRadiusMm)} ${level}Z`
}

/** What is left where solder has drawn back: a film of no height to speak of. */
const film = (origin: number, side: number): string =>
  `M${x(origin + side * 0.45)} ${y(0.012)}H${x(origin + side * JOINT.landRadiusMm)}V${y(0)}H${x(origin + side * 0.45)}Z`

/** A channel from the barrel’s wall that opens in the fillet. */
function blowhole(origin: number, surface: readonly SectionPoint[]): string {
  const [upper, lower] = [0.38, 0.62].map((share) => surface[Math.round(surface.length * share)]!)
  const wall = x(origin + JOINT.holeRadiusMm) - 1
  const from = `${x(origin + upper!.radiusMm)} ${y(upper!.heightMm)}`
  const to = `${x(origin + lower!.radiusMm)} ${y(lower!.heightMm)}`
  return `M${from}C${wall - 2} ${y(0.3)} ${wall - 8} ${y(0)} ${wall} ${y(-0.3)}C${wall + 3} ${y(-0.05)} ${wall + 8} ${y(0.06)} ${to}`
}

const ring = (xMm: number, yMm: number, radiusMm: number): string => {
  const r = radiusMm * SCALE
  return `M${x(xMm) - r} ${y(yMm)}a${r} ${r * 1.5} 0 1 0 ${2 * r} 0a${r} ${r * 1.5} 0 1 0 ${-2 * r} 0Z`
}

/** A crack down beside the lead, through the fillet and into the barrel. */
const crack = (origin: number): string =>
  `M${[0.52, 0.4, 0.3, 0.17, 0.06, -0.08, -0.22]
    .map((up, at) => `${x(origin + 0.37 + (at % 2 === 0 ? -0.03 : 0.035))} ${y(up)}`)
    .join('L')}`
