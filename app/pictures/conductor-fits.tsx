import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import {
  currentByIpc2152,
  currentByIpc2221,
  riseByIpc2152,
  riseByIpc2221,
  widthByIpc2152,
  widthByIpc2221,
} from '@/shared/physics/conductor-current'
import { conductorResistanceOhm } from '@/shared/physics/conductor-resistance'
import { conductorRiseMax } from '@/shared/plan/limits/conductors'
import { conductors, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { serviceTemperature } from '@/shared/plan/parameters/laminate'
import type { Unit } from '@/shared/quantity/unit'
import { ConductorFitChart } from './conductor-fit-chart'
import { governingFor, valueOf } from './value-of'

/** Both fits for every conductor, side by side, and their curves with the conductors among them. */
export function ConductorFits({ view }: { view: ProgrammeView }) {
  const rows = valueOf(view, conductors)
  if (!rows) return null
  const riseK = governingFor(view, conductorRiseMax).value
  const thicknesses = [...new Set(rows.map(({ copperUm }) => copperUm))].toSorted((a, b) => a - b)
  return (
    <Section
      heading="Two fits for the current"
      lead="IPC-2221 halves the current inside the board by decree; IPC-2152 rests on measured conductors. Neither knows of planes, neighbours or moving air."
    >
      <BothFits rows={rows} riseK={riseK} serviceC={valueOf(view, serviceTemperature)} />
      <div className="picture-row">
        {thicknesses.map((copperUm) => (
          <ConductorFitChart
            key={copperUm}
            copperUm={copperUm}
            riseK={riseK}
            rows={rows.filter((row) => row.copperUm === copperUm)}
          />
        ))}
      </div>
    </Section>
  )
}

interface BothFitsProps {
  rows: readonly ConductorRow[]
  riseK: number
  serviceC: number | undefined
}

function BothFits({ rows, riseK, serviceC }: BothFitsProps) {
  const number = (label: string, unit: Unit, of: (row: ConductorRow) => number | undefined) => ({
    label,
    set: 'number' as const,
    cell: (row: ConductorRow) => {
      const value = of(row)
      return value === undefined ? '–' : <Quantity value={value} unit={unit} figures={3} />
    },
  })
  return (
    <RuledTable
      caption="Every conductor by both fits"
      captionHidden
      narrow="cards-early"
      rows={rows}
      rowKey={({ net }, position) => `${net} ${position}`}
      columns={[
        { label: 'Net', names: true, cell: ({ net, layer }) => `${net}, ${layer}` },
        number('Width', 'mm', ({ widthMm }) => widthMm),
        number('Current', 'A', ({ currentA }) => currentA),
        number('Rise, 2221', 'K', (row) => riseByIpc2221(row, row.currentA)),
        number('Rise, 2152', 'K', (row) => riseByIpc2152(row, row.currentA)),
        number(`Carries at ${riseK} K, 2221`, 'A', (row) => currentByIpc2221(row, riseK)),
        number(`Carries at ${riseK} K, 2152`, 'A', (row) => currentByIpc2152(row, riseK)),
        number('Width needed, 2221', 'mm', (row) => neededMm(row, widthByIpc2221, riseK)),
        number('Width needed, 2152', 'mm', (row) => neededMm(row, widthByIpc2152, riseK)),
        number('Resistance, warm', 'mΩ', (row) => resistanceMohm(row, serviceC)),
        number('Drop', 'mV', (row) => {
          const mohm = resistanceMohm(row, serviceC)
          return mohm === undefined ? undefined : mohm * row.currentA
        }),
      ]}
    />
  )
}

type WidthFit = typeof widthByIpc2221

const neededMm = (row: ConductorRow, fit: WidthFit, riseK: number): number | undefined =>
  row.currentA > 0 ? fit(row, row.currentA, riseK) : undefined

/** At the service temperature and the conductor's own rise, as the rule on voltage drop takes it. */
const resistanceMohm = (row: ConductorRow, serviceC: number | undefined): number | undefined =>
  serviceC === undefined
    ? undefined
    : conductorResistanceOhm(row, serviceC + riseByIpc2221(row, row.currentA)) * 1e3
