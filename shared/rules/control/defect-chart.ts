import { samplesByAssembly, samplesByDay, type DefectSample } from '@/shared/records/defect-samples'
import type { Inspection } from '@/shared/records/inspection'
import type { Source } from '@/shared/plan/requirement'
import type { Unit } from '@/shared/quantity/unit'
import type { EstimatedBaseline } from '@/shared/statistics/charts/baseline'
import type { Chart } from '@/shared/statistics/charts/chart'
import { countDefectiveChart } from '@/shared/statistics/charts/count-defective'
import { defectCountChart } from '@/shared/statistics/charts/defect-count'
import { defectsPerUnitChart } from '@/shared/statistics/charts/defects-per-unit'
import { proportionDefectiveChart } from '@/shared/statistics/charts/proportion-defective'
import { judgeChart, type JudgedChart } from '@/shared/statistics/run-rules/judged-chart'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import { FEWEST_TO_CHART } from './chart-stretches'

/** Joints that the rate of a u chart is told for. */
export const JOINTS_A_UNIT = 1000

interface DefectChartKind {
  readonly label: string
  readonly plotted: string
  readonly unit: Unit
  readonly samples: (inspections: readonly Inspection[]) => DefectSample[]
  /** Why these samples cannot be charted so; undefined when they can. */
  readonly refuses: (samples: readonly DefectSample[]) => string | undefined
  readonly chart: (samples: readonly DefectSample[], baseline: EstimatedBaseline) => Chart
  readonly source: Source
}

const differ = (samples: readonly DefectSample[], size: (sample: DefectSample) => number): boolean =>
  samples.some((sample) => size(sample) !== size(samples[0]!))

/** Each assembly's rate; joints looked at may differ. */
const ASSEMBLY_RATES = {
  label: 'u: defects for each thousand joints seen',
  plotted: 'Defects for each thousand joints',
  unit: '1',
  samples: samplesByAssembly,
  refuses: () => undefined,
  chart: (samples, baseline) =>
    defectsPerUnitChart(
      samples.map(({ defects }) => defects),
      samples.map(({ jointsSeen }) => jointsSeen / JOINTS_A_UNIT),
      baseline,
    ),
  source: { cite: 'NIST/SEMATECH e-Handbook 6.3.3.1: counts control charts', how: 'published' },
} as const satisfies DefectChartKind

/** The four charts of counts, for what inspections find. */
export const DEFECT_CHARTS = {
  u: ASSEMBLY_RATES,
  'u-by-day': {
    ...ASSEMBLY_RATES,
    label: 'u: defects for each thousand joints seen, by day',
    samples: samplesByDay,
  },
  c: {
    label: 'c: defects an assembly',
    plotted: 'Defects an assembly',
    unit: '1',
    samples: samplesByAssembly,
    refuses: (samples) =>
      differ(samples, ({ jointsSeen }) => jointsSeen)
        ? 'Not all assemblies had the same number of joints looked at: a c chart would call the larger ones worse. The u chart allows for it.'
        : undefined,
    chart: (samples, baseline) =>
      defectCountChart(
        samples.map(({ defects }) => defects),
        baseline,
      ),
    source: { cite: 'NIST/SEMATECH e-Handbook 6.3.3.1: counts control charts', how: 'published' },
  },
  p: {
    label: 'p: share of assemblies with a defect, by day',
    plotted: 'Share of assemblies with a defect',
    unit: '1',
    samples: samplesByDay,
    refuses: () => undefined,
    chart: (samples, baseline) =>
      proportionDefectiveChart(
        samples.map(({ defectiveAssemblies }) => defectiveAssemblies),
        samples.map(({ assemblies }) => assemblies),
        baseline,
      ),
    source: { cite: 'NIST/SEMATECH e-Handbook 6.3.3.2: proportions control charts', how: 'published' },
  },
  np: {
    label: 'np: assemblies with a defect, by day',
    plotted: 'Assemblies with a defect',
    unit: '1',
    samples: samplesByDay,
    refuses: (samples) =>
      differ(samples, ({ assemblies }) => assemblies)
        ? 'Not every day saw the same number of assemblies: an np chart needs that. The p chart allows for it.'
        : undefined,
    chart: (samples, baseline) =>
      countDefectiveChart(
        samples.map(({ defectiveAssemblies }) => defectiveAssemblies),
        samples[0]!.assemblies,
        baseline,
      ),
    source: { cite: 'NIST/SEMATECH e-Handbook 6.3.3.2: proportions control charts', how: 'published' },
  },
} as const satisfies Record<string, DefectChartKind>
export type DefectChartKey = keyof typeof DEFECT_CHARTS

/** A chart of defects, or why there is none. */
export type DefectChart =
  | { readonly samples: readonly DefectSample[]; readonly chart: JudgedChart }
  | { readonly samples: readonly DefectSample[]; readonly says: string }

/** Below this many defects expected in a sample a chart of counts rings at a single one (common practice). */
const FEWEST_EXPECTED = 1

/** Whether the samples are so small that one defect already lies beyond the limits. */
export function isThin({ samples }: { readonly samples: readonly DefectSample[] }): boolean {
  const defects = samples.reduce((sum, sample) => sum + sample.defects, 0)
  return defects / samples.length < FEWEST_EXPECTED
}

/**
 * What inspections found, charted as asked. With days given the level is
 * estimated from the samples of those days alone and drawn over all.
 */
export function defectChart(
  inspections: readonly Inspection[],
  key: DefectChartKey,
  rules: readonly RunRule[],
  days: { readonly from?: string; readonly to?: string } = {},
): DefectChart {
  const kind: DefectChartKind = DEFECT_CHARTS[key]
  const samples = kind.samples(inspections).filter(({ jointsSeen }) => jointsSeen > 0)
  const none = (says: string): DefectChart => ({ samples, says })
  if (samples.length < FEWEST_TO_CHART)
    return none(
      `${samples.length} ${kind.samples === samplesByDay ? 'days of inspection' : 'assemblies inspected'}: limits are drawn from ${FEWEST_TO_CHART} on.`,
    )
  if (samples.every(({ defects }) => defects === 0))
    return none('No defect was found: there is no level to chart yet.')
  const refused = kind.refuses(samples)
  if (refused) return none(refused)
  const from = samples.findIndex(({ on }) => on >= (days.from ?? ''))
  const last = samples.findLastIndex(({ on }) => on <= (days.to ?? '9999-12-31'))
  if (from < 0 || last - from + 1 < FEWEST_TO_CHART)
    return none(`Fewer than ${FEWEST_TO_CHART} samples lie in the days that the limits are to come from.`)
  const chart = kind.chart(samples, { kind: 'estimated', from, to: last + 1 })
  return { samples, chart: judgeChart(chart, rules) }
}
