import { fluxDensityCoefficient, fluxReferenceTemperature } from '@/shared/plan/parameters/control-flux'
import { formatQuantity } from '@/shared/quantity/format'
import type { Unit } from '@/shared/quantity/unit'
import { findCharacteristic, type CharacteristicKey } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { acidNumberSeries } from './acid-number-series'
import { dwellSeries } from './dwell-series'
import { densitySeries, USUAL_REFERENCE_C } from './flux-density-series'
import { columnSeries, type LogSeries } from './log-series'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { optional, type Inputs } from '@/shared/rules/rule'
import { memo } from '@/shared/memo'

/** What a reading is brought to before it is charted. */
export const chartedReads = {
  reference: optional(fluxReferenceTemperature),
  coefficient: optional(fluxDensityCoefficient),
}
export type ChartedInputs = Inputs<typeof chartedReads>

/** What a reading is brought to, as the specification says. */
export const chartedInputs = (facts: Facts | undefined): ChartedInputs =>
  (facts && inputsOf(chartedReads, facts)) ?? { reference: undefined, coefficient: undefined }

/** What a log charts: the quantity that the specification limits, made from what was read. */
export interface ChartedSeries {
  readonly series: LogSeries
  readonly label: string
  readonly unit: Unit
}

/**
 * A density brought to one temperature, an acid number from its titration, a
 * dwell from length and speed; anything else as it was read. Undefined for a
 * characteristic without a number to chart, or that is not known.
 */
export const chartedSeries = (log: Log, inputs: ChartedInputs): ChartedSeries | undefined =>
  findCharacteristic(log.characteristic) && CHARTED[log.characteristic as CharacteristicKey](log, inputs)

type Charted = (log: Log, inputs: ChartedInputs) => ChartedSeries | undefined

/** The charted column as it was read. */
const asRead: Charted = (log) => {
  const characteristic = findCharacteristic(log.characteristic)
  const column = characteristic?.columns[characteristic.charted]
  if (!characteristic || column?.kind !== 'number') return undefined
  return { series: columnSeries(log, characteristic.charted), label: column.label, unit: column.unit }
}

const densityOf = memo(densitySeries)
const acidNumberOf = memo(acidNumberSeries)
const dwellOf = memo((log: Log) => dwellSeries(log))

const CHARTED: Readonly<Record<CharacteristicKey, Charted>> = {
  'flux-density': (log, { reference = USUAL_REFERENCE_C, coefficient }) => ({
    series: densityOf(log, reference, coefficient),
    label: `Density at ${formatQuantity(reference, '°C')}`,
    unit: 'g/ml',
  }),
  'flux-acid-number': (log) => ({
    series: acidNumberOf(log),
    label: 'Acid number',
    unit: 'mg KOH/g',
  }),
  'wave-contact': (log) => ({
    series: dwellOf(log),
    label: 'Dwell in the main wave',
    unit: 's',
  }),
  'bath-composition': asRead,
  'bath-temperature': asRead,
  'store-climate': asRead,
  'thermal-profile': asRead,
  'tip-ground': asRead,
  'tip-temperature': asRead,
  'wave-geometry': asRead,
  'wave-preheat': asRead,
}
