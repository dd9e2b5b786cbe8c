import {
  flagColumn,
  numberColumn,
  optionalColumn,
  textColumn,
  type FlagColumn,
  type NumberColumn,
} from '@/shared/columns/column'
import { tableParameter, type ValueOf } from '@/shared/plan/parameter'

/** What nets carry, by the names that the board's production files give them. */
export const netClasses = tableParameter({
  key: 'net-classes',
  label: 'Nets with voltage and current',
  help: 'What the nets of the board’s files carry. Every gap between two nets with a voltage, and every conductor of a net with a current, is then judged where the files are read.',
  owner: 'design',
  addedLater: true,
  columns: {
    nets: textColumn({
      label: 'Nets',
      maxLength: 200,
      help: 'Names as the files have them, parted by commas. A star stands for any letters: "24V*".',
    }),
    voltageV: optionalColumn<NumberColumn>(
      numberColumn({
        label: 'Voltage against common',
        unit: 'V',
        min: -10_000,
        max: 10_000,
        help: 'Direct voltage or peak, not effective, with its sign; 0 for common itself.',
      }),
    ),
    alternates: optionalColumn<FlagColumn>(
      flagColumn({ label: 'Swings to both signs', help: 'As an alternating voltage does.' }),
    ),
    currentA: optionalColumn<NumberColumn>(numberColumn({ label: 'Current', unit: 'A', min: 0, max: 200 })),
    dropMostMv: optionalColumn<NumberColumn>(
      numberColumn({ label: 'Voltage drop at most', unit: 'mV', min: 0.001, max: 1e6 }),
    ),
  },
})
export type NetClass = ValueOf<typeof netClasses>[number]
