import { DEFECT_CHART_OPTIONS, type DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import type { Unit } from '@/shared/quantity/unit'
import type { Source } from '@/shared/sources/source'
import { samplesByAssembly, samplesByDay, type DefectSample } from './defect-samples'
import type { Inspection } from '@/shared/records/inspection'
import type { Baseline, KnownLevel } from '@/shared/statistics/charts/baseline'
import type { Chart } from '@/shared/statistics/charts/chart'
import { countDefectiveChart } from '@/shared/statistics/charts/count-defective'
import { defectCountChart } from '@/shared/statistics/charts/defect-count'
import { defectsPerUnitChart } from '@/shared/statistics/charts/defects-per-unit'
import { proportionDefectiveChart } from '@/shared/statistics/charts/proportion-defective'

/** Joints that the rate of a u chart is told for. */
export const JOINTS_A_UNIT = 1000

/** One of the charts of counts: which samples it plots, and how it comes to its limits. */
export interface DefectChartKind {
  readonly plotted: string
  readonly unit: Unit
  readonly formula: string
  /** What the samples are called. */
  readonly sampled: 'assemblies inspected' | 'days of inspection'
  readonly samples: (inspections: readonly Inspection[]) => DefectSample[]
  /** Why these samples cannot be charted so; undefined when they can. */
  readonly refuses: (samples: readonly DefectSample[]) => string | undefined
  readonly chart: (samples: readonly DefectSample[], baseline: Baseline<KnownLevel>) => Chart
  readonly source: Source
}

const COUNTS: Source = {
  cite: 'NIST/SEMATECH e-Handbook 6.3.3.1: counts control charts',
  how: 'published',
}
const PROPORTIONS: Source = {
  cite: 'NIST/SEMATECH e-Handbook 6.3.3.2: proportions control charts',
  how: 'published',
}
const BY_ASSEMBLY = { sampled: 'assemblies inspected', samples: samplesByAssembly } as const
const BY_DAY = { sampled: 'days of inspection', samples: samplesByDay } as const

const differ = (samples: readonly DefectSample[], size: (sample: DefectSample) => number): boolean =>
  samples.some((sample) => size(sample) !== size(samples[0]!))

const RATES: Omit<DefectChartKind, 'sampled' | 'samples'> = {
  plotted: 'Defects for each thousand joints',
  unit: '1',
  formula: 'ū ± 3 √(ū / thousands of joints)',
  refuses: () => undefined,
  chart: (samples, baseline) =>
    defectsPerUnitChart(
      samples.map(({ defects }) => defects),
      samples.map(({ jointsSeen }) => jointsSeen / JOINTS_A_UNIT),
      baseline,
    ),
  source: COUNTS,
}

/** The charts of counts, for what inspections find. */
export const DEFECT_CHARTS: Readonly<Record<DefectChartKey, DefectChartKind>> = {
  'u-by-day': { ...RATES, ...BY_DAY },
  u: { ...RATES, ...BY_ASSEMBLY },
  c: {
    ...BY_ASSEMBLY,
    plotted: 'Defects an assembly',
    unit: '1',
    formula: 'c̄ ± 3 √c̄',
    refuses: (samples) =>
      differ(samples, ({ jointsSeen }) => jointsSeen)
        ? 'Not all assemblies had the same number of joints inspected: a c chart would call the larger ones worse. The u chart allows for it.'
        : undefined,
    chart: (samples, baseline) =>
      defectCountChart(
        samples.map(({ defects }) => defects),
        baseline,
      ),
    source: COUNTS,
  },
  p: {
    ...BY_DAY,
    plotted: 'Share of assemblies with a defect',
    unit: '1',
    formula: 'p̄ ± 3 √(p̄ (1 − p̄) / assemblies)',
    refuses: () => undefined,
    chart: (samples, baseline) =>
      proportionDefectiveChart(
        samples.map(({ defectiveAssemblies }) => defectiveAssemblies),
        samples.map(({ assemblies }) => assemblies),
        baseline,
      ),
    source: PROPORTIONS,
  },
  np: {
    ...BY_DAY,
    plotted: 'Assemblies with a defect',
    unit: '1',
    formula: 'n p̄ ± 3 √(n p̄ (1 − p̄))',
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
    source: PROPORTIONS,
  },
}

/** "u: defects for each thousand joints inspected, by day" */
export const defectChartLabel = (key: DefectChartKey): string =>
  DEFECT_CHART_OPTIONS.find(({ value }) => value === key)!.label
