import type { Inspection } from '@/shared/records/inspection'
import type { DefectChartChoice } from '@/shared/charts/defect-chart'
import { DEFECT_CHARTS } from '@/shared/charts/defect-chart-kinds'
import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'

/** What the address asks for; a link carries it. */
export interface DefectChartAsked {
  chart?: string
  from?: string
  to?: string
}

/**
 * The chart as an address asks for it, over what the specification says; days of
 * which one end is left out run from the first inspection or up to the last.
 */
export function choiceAsked(
  asked: DefectChartAsked,
  specified: readonly [DefectChartChoice, ...DefectChartChoice[]],
  inspections: readonly Inspection[],
): DefectChartChoice {
  const chart = isChart(asked.chart) ? asked.chart : specified[0].chart
  const known = specified.find((one) => one.chart === chart)
  if (!asked.from && !asked.to) return known ?? { chart, phases: specified[0].phases }
  const days = inspections.map(({ inspectedOn }) => inspectedOn).sort()
  const [from, to] = [asked.from || days[0], asked.to || days.at(-1)]
  return { chart, phases: specified[0].phases, ...(from && to && from <= to && { baseline: { from, to } }) }
}

const isChart = (key: string | undefined): key is DefectChartKey =>
  key !== undefined && Object.hasOwn(DEFECT_CHARTS, key)
