import { Curves, type Curve } from '@/app/drawing/curves'
import { currentByIpc2152, currentByIpc2221, type Conductor } from '@/shared/physics/conductor-current'
import type { ConductorRow } from '@/shared/plan/parameters/conductors'
import { formatQuantity } from '@/shared/quantity/format'

interface ConductorFitChartProps {
  copperUm: number
  riseK: number
  rows: readonly ConductorRow[]
}

type Layer = Conductor['layer']

interface Fit {
  readonly name: string
  /** Drawn with a heavy line. */
  readonly heavy: boolean
  readonly layer: Layer
  readonly current: typeof currentByIpc2221
}
const FITS = [
  { name: '2221 out', heavy: true, layer: 'external', current: currentByIpc2221 },
  { name: '2221 in', heavy: true, layer: 'internal', current: currentByIpc2221 },
  { name: '2152 out', heavy: false, layer: 'external', current: currentByIpc2152 },
  { name: '2152 in', heavy: false, layer: 'internal', current: currentByIpc2152 },
] as const satisfies readonly Fit[]

const STEPS = 40
/** The widths that the table names, mm. */
const TOLD_MM = [0.2, 0.3, 0.5, 1, 2, 5]

/** Current against width at the rise allowed, by both fits outside and inside the board. */
export function ConductorFitChart({ copperUm, riseK, rows }: ConductorFitChartProps) {
  const widths = rows.map(({ widthMm }) => widthMm)
  const [from, to] = [Math.min(0.1, ...widths) / 1.2, Math.max(5, ...widths) * 1.2]
  const drawn = Array.from({ length: STEPS + 1 }, (_, step) => from * (to / from) ** (step / STEPS))
  const curves = FITS.map(({ name, heavy, layer, current }): Curve => ({
    name,
    heavy,
    points: drawn.map((widthMm) => [widthMm, current({ layer, widthMm, copperUm }, riseK)] as const),
  }))
  const currents = [
    ...curves.flatMap(({ points }) => points.map(([, amperes]) => amperes)),
    ...rows.map(drawnCurrent),
  ]
  const amperes = (value: number): string => formatQuantity(value, 'A', 3)
  return (
    <Curves
      title={`Current for ${formatQuantity(riseK, 'K')} in copper of ${formatQuantity(copperUm, 'µm')}`}
      description={`Current against conductor width by the fits to IPC-2221 and IPC-2152, outside and inside the board, with ${rows.map(({ net }) => net).join(', ')} marked. A conductor under the line of its layer warms less than allowed.`}
      across={{ label: 'Width', unit: 'mm', from, to, log: true }}
      up={{
        label: 'Current',
        unit: 'A',
        from: Math.min(...currents) / 1.3,
        to: Math.max(...currents) * 1.3,
        log: true,
      }}
      curves={curves}
      points={rows.map((row) => ({ x: row.widthMm, y: drawnCurrent(row), name: `${row.net}, ${row.layer}` }))}
      marginValue={74}
      numbers={{
        columns: [{ label: 'Width' }, ...FITS.map(({ name }) => ({ label: name }))],
        rows: TOLD_MM.map((widthMm) => [
          formatQuantity(widthMm, 'mm'),
          ...FITS.map(({ layer, current }) => amperes(current({ layer, widthMm, copperUm }, riseK))),
        ]),
      }}
    />
  )
}

/** A conductor without current has no place on a logarithmic axis: it is drawn at a milliampere. */
const drawnCurrent = ({ currentA }: ConductorRow): number => Math.max(currentA, 1e-3)
