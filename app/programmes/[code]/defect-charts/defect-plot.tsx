import { ControlPlot } from '@/app/drawing/control-plot'
import type { Numbers } from '@/app/drawing/numbers-table'
import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import { formatNumber } from '@/shared/quantity/format'
import type { DefectSample } from '@/shared/charts/defect-samples'
import type { DefectChart } from '@/shared/charts/defect-chart'
import { DEFECT_CHARTS } from '@/shared/charts/defect-chart-kinds'
import type { DefectSignal } from '@/shared/charts/defect-signals'
import type { JudgedChart } from '@/shared/statistics/run-rules/judged-chart'

interface DefectPlotProps {
  chart: DefectChartKey
  found: Extract<DefectChart, { chart: JudgedChart }>
  signals: readonly DefectSignal[]
}

/** A chart of counts: each sample against limits that follow its size. */
export function DefectPlot({ chart: key, found: { samples, chart }, signals }: DefectPlotProps) {
  const { plotted, unit } = DEFECT_CHARTS[key]
  return (
    <ControlPlot
      title={plotted}
      description={`${samples.length} samples in order; ${signals.length} signals.`}
      up={{ label: plotted, unit }}
      across={{
        kind: 'order',
        title: 'Samples in the order they were inspected',
        places: samples.map((_, index) => index + 1),
      }}
      lines={[chart.values]}
      limits={chart}
      stretches={chart.phases}
      signals={signals.map(({ point, message }) => ({ point, line: 0, message }))}
      floor={0}
      note={notesOf(samples, chart).join(' ')}
      numbers={numbersOf(samples, chart)}
    />
  )
}

/** What the picture and its numbers leave out, and why. */
const notesOf = (samples: readonly DefectSample[], { rulesNotRun }: JudgedChart): string[] => [
  ...(rulesNotRun.length > 0
    ? [`${rulesNotRun.length} run rules switched off: ${rulesNotRun[0]!.because}`]
    : []),
  ...(samples.length > MAX_ROWS
    ? [`The data table lists samples with a defect or a signal, the newest ${MAX_ROWS} at most.`]
    : []),
]

const MAX_ROWS = 40

/** All samples, or of many those that say something: with a defect, or where a signal sounded. */
function worthListing(samples: readonly DefectSample[], { signals }: JudgedChart): readonly number[] {
  const every = samples.map((_, at) => at)
  if (samples.length <= MAX_ROWS) return every
  const sounded = new Set(signals.map(({ soundedAt }) => soundedAt))
  return every.filter((at) => samples[at]!.defects > 0 || sounded.has(at)).slice(-MAX_ROWS)
}

function numbersOf(samples: readonly DefectSample[], chart: JudgedChart): Numbers {
  return {
    columns: [
      { label: 'No.' },
      { label: 'Sample', set: 'text' },
      { label: 'Assemblies' },
      { label: 'Joints inspected' },
      { label: 'Defects' },
      { label: 'Plotted' },
      { label: 'Lower limit' },
      { label: 'Upper limit' },
    ],
    rows: worthListing(samples, chart).map((at) => {
      const { name, assemblies, jointsSeen, defects } = samples[at]!
      return [
        String(at + 1),
        name,
        String(assemblies),
        String(jointsSeen),
        String(defects),
        ...[chart.values, chart.lower, chart.upper].map((column) =>
          Number.isNaN(column[at]!) ? 'none' : formatNumber(column[at]!, 3),
        ),
      ]
    }),
  }
}
