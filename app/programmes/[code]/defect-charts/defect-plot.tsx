import { ControlPlot } from '@/app/drawing/control-plot'
import type { Numbers } from '@/app/drawing/numbers-table'
import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import { formatNumber } from '@/shared/quantity/format'
import type { DefectSample } from '@/shared/records/defect-samples'
import type { DefectChart } from '@/shared/rules/assessment/defect-chart'
import { DEFECT_CHARTS } from '@/shared/rules/assessment/defect-chart-kinds'
import type { DefectSignal } from '@/shared/rules/assessment/defect-signals'
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
        title: 'Samples in the order they were looked at',
        places: samples.map((_, index) => index + 1),
      }}
      lines={[chart.values]}
      limits={chart}
      stretches={chart.phases}
      signals={signals.map(({ point, says }) => ({ point, line: 0, says }))}
      floor={0}
      {...(chart.rulesSetAside.length > 0 && {
        note: `${chart.rulesSetAside.length} run rules are not run here. ${chart.rulesSetAside[0]!.because}`,
      })}
      numbers={numbersOf(samples, chart)}
    />
  )
}

const MOST_ROWS = 200

function numbersOf(samples: readonly DefectSample[], chart: JudgedChart): Numbers {
  const first = Math.max(0, samples.length - MOST_ROWS)
  return {
    columns: [
      { label: 'Sample' },
      { label: 'Assemblies' },
      { label: 'Joints seen' },
      { label: 'Defects' },
      { label: 'Plotted' },
      { label: 'Lower limit' },
      { label: 'Upper limit' },
    ],
    rows: samples.slice(first).map(({ name, assemblies, jointsSeen, defects }, index) => {
      const at = first + index
      return [
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
