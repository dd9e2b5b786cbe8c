import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { SectionPoint } from '@/shared/physics/solder-meniscus'
import { DefectDetail } from './defect-detail'
import type { DefectScene } from './defect-scene'
import { Drawing } from './drawing'
import { hatchRectangle } from './hatch-rectangle'
import { defectFillet, GUIDE_JOINT as JOINT } from './defect-fillet'
import { AXIS, BOTTOM, HEIGHT, LAND_Y, pathThrough, SCALE, WIDTH, x, y } from './defect-place'

/** A joint with one kind of defect, cut through; soldered side up. Its solder is drawn by volume and contact angle. */
export function DefectSection({ title, scene }: { title: string; scene: DefectScene }) {
  const { fillet, also, unfilled = 0, mark } = scene
  const { meniscus, volumeMm3, surface } = defectFillet(fillet)
  const pair = also === 'neighbour bridged' || also === 'neighbour and ball'
  const axes = pair ? [-JOINT.pitchMm / 2, JOINT.pitchMm / 2] : [0]
  const origin = axes[0]!
  const [atX, atY] = placeOf(mark.at, surface)
  return (
    <Drawing
      title={title}
      description={`${title} in section: ${mark.message}. The fillet is ${meniscus.shape}, with ${formatNumber(fillet.leadAngleDeg)}° at the lead.`}
      width={WIDTH}
      height={HEIGHT}
      size="narrow"
      numbers={{
        columns: [{ label: 'Drawn with' }, { label: 'Value' }],
        rows: [
          ['Contact angle at the lead', formatQuantity(fillet.leadAngleDeg, '°')],
          ['Angle at the land', formatQuantity(meniscus.landAngleDeg, '°', 3)],
          ['Solder of the fillet', `${formatNumber(volumeMm3, 3)} mm³`],
          ['Of a sound fillet', formatQuantity(fillet.shareOfSound * 100, '%', 3)],
          ['Height on the lead', formatQuantity(meniscus.heightMm, 'mm', 3)],
          ['Reach on the land', `${formatNumber(meniscus.footRadiusMm, 3)} of ${JOINT.landRadiusMm} mm`],
          ['Barrel filled', formatQuantity((1 - unfilled) * 100, '%', 3)],
          ['Outline', meniscus.shape],
        ],
      }}
    >
      <Board axes={axes} />
      {axes.map((axis) => (
        <g key={axis}>
          <Solder axis={axis} surface={surface} unfilled={unfilled} />
          <Copper axis={axis} lifted={also === 'lifted land'} />
          <Lead axis={axis} />
        </g>
      ))}
      {also && <DefectDetail also={also} origin={origin} surface={surface} />}
      <Mark message={mark.message} atX={x(origin + atX)} atY={y(atY)} />
    </Drawing>
  )
}

function Board({ axes }: { axes: readonly number[] }) {
  const edges = [
    12,
    ...axes.flatMap((axis) => [x(axis - JOINT.holeRadiusMm), x(axis + JOINT.holeRadiusMm)]),
    WIDTH - 12,
  ]
  const blocks = edges.flatMap((from, at) => (at % 2 === 0 ? [[from, edges[at + 1]!] as const] : []))
  return (
    <>
      <path
        className="fill-laminate"
        d={blocks.map(([from, to]) => `M${from} ${LAND_Y}H${to}V${BOTTOM}H${from}Z`).join('')}
      />
      <path
        className="line-hatch"
        d={blocks.map(([from, to]) => hatchRectangle(from, LAND_Y, to - from, BOTTOM - LAND_Y, 11)).join('')}
      />
      <path
        className="line-seen"
        d={blocks.map(([from, to]) => `M${from} ${LAND_Y}H${to}M${from} ${BOTTOM}H${to}`).join('')}
      />
    </>
  )
}

const COPPER = 4

function Copper({ axis, lifted }: { axis: number; lifted: boolean }) {
  return [-1, 1].map((side) => {
    const at = (mm: number) => x(axis + side * mm)
    const wall = at(JOINT.holeRadiusMm)
    const inner = wall + side * COPPER
    const [edge, rise] = [at(JOINT.landRadiusMm), lifted && side === 1 ? 15 : 0]
    return (
      <path
        key={side}
        className="fill-copper-bright"
        stroke="var(--color-ink)"
        strokeWidth="0.8"
        d={`M${wall} ${LAND_Y - COPPER}L${edge} ${LAND_Y - COPPER - rise}v${COPPER}L${inner} ${LAND_Y}V${BOTTOM}H${edge}v${COPPER}H${wall}Z`}
      />
    )
  })
}

function Lead({ axis }: { axis: number }) {
  const [left, wide] = [x(axis - JOINT.leadRadiusMm), 2 * JOINT.leadRadiusMm * SCALE]
  return (
    <>
      <path className="lead-cut" d={`M${left} ${y(JOINT.leadOutMm)}h${wide}V${BOTTOM + 34}h${-wide}Z`} />
      <path className="line-chain" d={`M${x(axis)} ${y(JOINT.leadOutMm) - 10}V${BOTTOM + 42}`} />
    </>
  )
}

type SolderProps = { axis: number; surface: readonly SectionPoint[]; unfilled: number }

/** Fillet, barrel and the foot on the component side; a barrel that is not full ends in a hollow. */
function Solder({ axis, surface, unfilled }: SolderProps) {
  const fill = BOTTOM - unfilled * (BOTTOM - LAND_Y)
  return [-1, 1].map((side) => {
    const at = (mm: number) => x(axis + side * mm)
    const [lead, wall] = [at(JOINT.leadRadiusMm), at(JOINT.holeRadiusMm)]
    const foot =
      unfilled > 0
        ? `V${fill}Q${(lead + wall) / 2} ${fill - 9} ${lead} ${fill}`
        : `V${BOTTOM + COPPER}H${at(0.8)}Q${at(0.4)} ${BOTTOM + 8} ${lead} ${BOTTOM + 26}`
    return (
      <path
        key={side}
        className="fill-solder"
        stroke="var(--color-ink)"
        strokeWidth="1.4"
        d={`${pathThrough(surface, axis, side)}L${wall} ${LAND_Y - COPPER}${foot}Z`}
      />
    )
  })
}

const placeOf = (at: DefectScene['mark']['at'], surface: readonly SectionPoint[]) => {
  if (typeof at !== 'number') return at
  const { radiusMm, heightMm } = surface[Math.round(at * (surface.length - 1))]!
  return [radiusMm, heightMm] as const
}

/** A short line with a point at what is meant, and its words in the margin above. */
function Mark({ message, atX, atY }: { message: string; atX: number; atY: number }) {
  const right = atX >= AXIS
  const [textX, textY] = [right ? WIDTH - 12 : 12, 20]
  const elbow = right ? Math.max(atX + 26, WIDTH - 74) : Math.min(atX - 26, 74)
  return (
    <g>
      <path className="line-halo" d={`M${elbow} ${textY + 7}L${atX} ${atY}`} />
      <path className="line-limit" d={`M${elbow} ${textY + 7}L${atX} ${atY}`} />
      <circle cx={atX} cy={atY} r="3" fill="var(--color-carmine)" />
      <text x={textX} y={textY} textAnchor={right ? 'end' : 'start'} className="text-haloed">
        {message}
      </text>
    </g>
  )
}
