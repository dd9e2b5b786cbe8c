import {
  choiceColumn,
  numberColumn,
  optionalColumn,
  textColumn,
  type NumberColumn,
} from '@/shared/columns/column'
import { choiceParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

/** Nobody etches a wider one: what needs more is a bar or a wire, mm. */
export const WIDEST_CONDUCTOR_MM = 100

export const conductors = tableParameter({
  key: 'conductors',
  label: 'Conductors that carry current',
  help: 'The narrowest place of each net that carries more than a signal.',
  owner: 'design',
  columns: {
    net: textColumn({ label: 'Net', maxLength: 60 }),
    layer: choiceColumn({
      label: 'Layer',
      options: [
        { value: 'external', label: 'External' },
        { value: 'internal', label: 'Internal' },
      ],
    }),
    widthMm: numberColumn({ label: 'Width', unit: 'mm', min: 0.05, max: WIDEST_CONDUCTOR_MM }),
    copperUm: numberColumn({
      label: 'Copper',
      unit: 'µm',
      min: 5,
      max: 500,
      help: 'Finished copper: foil of nominal 35 µm may measure 32.',
    }),
    currentA: numberColumn({ label: 'Current', unit: 'A', min: 0, max: 200 }),
    lengthMm: numberColumn({ label: 'Length', unit: 'mm', min: 0.1, max: 10_000 }),
    dropMostMv: optionalColumn<NumberColumn>(
      numberColumn({ label: 'Voltage drop at most', unit: 'mV', min: 0.001, max: 1e6 }),
    ),
  },
})
export type ConductorRow = ValueOf<typeof conductors>[number]

export const conductorMethod = choiceParameter({
  key: 'conductor-method',
  label: 'Current judged by',
  help: 'The two fits differ most inside the board. Left open, the smaller current of both applies.',
  owner: 'design',
  options: [
    { value: 'ipc-2221', label: 'IPC-2221 chart (fit)' },
    { value: 'ipc-2152', label: 'IPC-2152 data (fit)' },
  ],
})
