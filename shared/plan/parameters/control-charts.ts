import {
  choiceColumn,
  dateColumn,
  numberColumn,
  optionalColumn,
  textColumn,
  type RowOf,
} from '@/shared/columns/column'
import { choiceParameter, flagParameter, tableParameter } from '@/shared/plan/parameter'

export const chartRules = choiceParameter({
  key: 'chart-rules',
  label: 'Chart signals to be answered',
  help: 'A point beyond the limits is answered always. The zone rules find small shifts sooner, at the price of more false signals: on a thousand readings of a steady process about 3 beyond the limits, 12 by the zone rules, 15 by Nelson’s tests. Left open, points beyond the limits only.',
  owner: 'quality',
  options: [
    { value: 'limits', label: 'Points beyond the control limits' },
    { value: 'zones', label: 'All four zone rules of the Western Electric handbook (1956)' },
    { value: 'nelson', label: 'All eight tests of Nelson (1984)' },
  ],
})

/** Charts of a measured characteristic, as a specification and an address name them. */
export const CHART_OPTIONS = [
  { value: 'individuals', label: 'Individuals and moving range' },
  { value: 'mean-range', label: 'Means and ranges of subgroups (X̄–R)' },
  { value: 'mean-deviation', label: 'Means and standard deviations of subgroups (X̄–S)' },
  { value: 'weighted-average', label: 'Exponentially weighted moving average (EWMA)' },
  { value: 'cumulative-sum', label: 'Cumulative sums (CUSUM)' },
] as const

/** How readings are put together into subgroups. */
export const GROUPING_OPTIONS = [
  { value: 'in-a-row', label: 'So many in a row' },
  { value: 'each-day', label: 'The first so many of each day' },
] as const

const chartColumns = {
  characteristic: choiceColumn({
    label: 'Characteristic',
    options: [
      { value: 'flux-density', label: 'Flux density' },
      { value: 'flux-acid-number', label: 'Flux acid number' },
      { value: 'bath-temperature', label: 'Bath temperature' },
      { value: 'wave-contact', label: 'Wave contact' },
      { value: 'wave-geometry', label: 'Wave immersion' },
      { value: 'wave-preheat', label: 'Preheat' },
    ],
  }),
  chart: choiceColumn({ label: 'Chart', options: CHART_OPTIONS }),
  subgroup: optionalColumn(
    numberColumn({ label: 'Readings a subgroup', unit: '1', min: 2, max: 25, whole: true }),
  ),
  grouping: optionalColumn(choiceColumn({ label: 'Subgroups are', options: GROUPING_OPTIONS })),
  baselineFrom: optionalColumn(dateColumn({ label: 'Limits from readings of' })),
  baselineTo: optionalColumn(dateColumn({ label: 'to' })),
}

export const processCharts = tableParameter({
  key: 'process-charts',
  label: 'Charts and fixed limits',
  help: 'One row per characteristic. With two dates the limits come from the readings of those days and are held from then on; without, they are estimated again from all readings. A characteristic without a row has the individuals chart, its limits estimated.',
  owner: 'quality',
  columns: chartColumns,
  maxRows: 6,
})
export type ProcessChartRow = RowOf<typeof chartColumns>

const phaseColumns = {
  log: textColumn({ label: 'Log', maxLength: 40, help: 'The code of the log.' }),
  startsOn: dateColumn({ label: 'From this day on, UTC' }),
  name: textColumn({ label: 'What began', maxLength: 60, help: 'Such as “new pump” or “bath renewed”.' }),
}

export const chartPhases = tableParameter({
  key: 'chart-phases',
  label: 'Control-limit resets',
  help: 'After a known and lasting change a chart starts afresh: limits of its own, and no pattern reaches across. One row per reset.',
  owner: 'quality',
  columns: phaseColumns,
  maxRows: 60,
})
export type ChartPhaseRow = RowOf<typeof phaseColumns>

export const capabilityAsked = flagParameter({
  key: 'capability-asked',
  label: 'Capability of the process is to be shown',
  help: 'Asks each log with a specified window for its Cpk and Ppk with a confidence bound. Left open, it is not asked.',
  owner: 'quality',
})
