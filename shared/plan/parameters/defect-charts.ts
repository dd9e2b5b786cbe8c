import { choiceColumn, dateColumn, optionalColumn, textColumn, type RowOf } from '@/shared/columns/column'
import { tableParameter } from '@/shared/plan/parameter'

/** Charts of what inspections find, as a specification, an answer and an address name them. */
export const DEFECT_CHART_OPTIONS = [
  { value: 'u-by-day', label: 'u: defects for each thousand joints inspected, by day' },
  { value: 'u', label: 'u: defects for each thousand joints inspected, by assembly' },
  { value: 'c', label: 'c: defects an assembly' },
  { value: 'p', label: 'p: share of assemblies with a defect, by day' },
  { value: 'np', label: 'np: assemblies with a defect, by day' },
] as const
export type DefectChartKey = (typeof DEFECT_CHART_OPTIONS)[number]['value']

const chartColumns = {
  chart: choiceColumn({ label: 'Chart', options: DEFECT_CHART_OPTIONS }),
  baselineFrom: optionalColumn(dateColumn({ label: 'Limits from samples of' })),
  baselineTo: optionalColumn(dateColumn({ label: 'to' })),
}

export const defectCharts = tableParameter({
  key: 'defect-charts',
  label: 'Defect control charts and fixed limits',
  help: 'One row per chart whose signals must be answered. With two dates the limits come from the samples of those days and are held from then on; without, they are estimated again from all samples. Left open, the u chart by day is answered for, its limits estimated.',
  owner: 'quality',
  columns: chartColumns,
  maxRows: DEFECT_CHART_OPTIONS.length,
})
export type DefectChartRow = RowOf<typeof chartColumns>

const phaseColumns = {
  startsOn: dateColumn({ label: 'From this day on' }),
  name: textColumn({ label: 'What began', maxLength: 60, help: 'Such as “new stencil” or “second line”.' }),
}

export const defectChartPhases = tableParameter({
  key: 'defect-chart-phases',
  label: 'Control-limit resets of defect charts',
  help: 'After a known and lasting change the charts start afresh: limits of their own, and no pattern reaches across. One row per reset, by the day of inspection.',
  owner: 'quality',
  columns: phaseColumns,
  maxRows: 60,
})
export type DefectChartPhaseRow = RowOf<typeof phaseColumns>
