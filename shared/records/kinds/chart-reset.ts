import { dateColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/**
 * A known and lasting change of a machine, from which on the charts of its log have limits of their own: said once, for
 * every programme that reads the log.
 */
export const chartReset = recordKind({
  key: 'chart-reset',
  label: 'control-limit reset',
  plural: 'Control-limit resets of machines',
  help: 'One row per known and lasting change: from that day on the charts of the log start afresh, with limits of their own, and no pattern reaches across.',
  stage: 'control',
  departments: ['production', 'quality'],
  assemblies: null,
  teaches: false,
  columns: {
    log: textColumn({ label: 'Log', maxLength: 40, help: 'The code of the log.' }),
    startsOn: dateColumn({ label: 'From this day on, UTC' }),
    name: textColumn({
      label: 'What began',
      maxLength: 60,
      help: 'Such as “new pump” or “bath renewed”.',
    }),
  },
  cautions: [],
  keptAt: 'machine',
})
