import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { ClearanceGauge, type ClearanceGaugeProps } from './clearance-gauge'
import { Drawing } from './drawing'
import { AXIS, leadSides, type LeadAndHole, type Toleranced } from './lead-geometry'
import { PlanView } from './lead-plan-view'
import { SECTION_TOP, SectionView, STUB } from './lead-section-view'

type LeadInHoleProps = LeadAndHole & {
  title: string
  clearance: ClearanceGaugeProps
}

const WIDTH = 440

/** Section over plan on one axis, both to one scale, and the clearance gauged against its window. */
export function LeadInHole(props: LeadInHoleProps) {
  const { title, lead, landDiameterMm, boardThicknessMm, clearance } = props
  const scale = Math.min(210 / landDiameterMm, 190 / boardThicknessMm)
  const boardBottom = SECTION_TOP + boardThicknessMm * scale
  const planY = boardBottom + STUB + 34 + (landDiameterMm / 2) * scale
  const gaugeY = planY + (landDiameterMm / 2) * scale + 66
  return (
    <Drawing
      title={title}
      description={`A ${lead.form} lead in ${props.plated === false ? 'an unplated' : 'a plated'} hole, in section and from above, to scale. Radial clearance ${formatNumber(clearance.minMm, 3)} to ${formatQuantity(clearance.greatestMm, 'mm', 3)} against a window of ${clearance.windowMm.from} to ${clearance.windowMm.to} mm.`}
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

function numbersOf({ holeMm, lead, landDiameterMm, boardThicknessMm, clearance }: LeadInHoleProps) {
  const { across, deep } = leadSides(lead)
  const row = (name: string, { min, nominal, greatest }: Toleranced) => [
    name,
    ...[min, nominal, greatest].map((mm) => formatQuantity(mm, 'mm', 3)),
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
        min: clearance.minMm,
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
