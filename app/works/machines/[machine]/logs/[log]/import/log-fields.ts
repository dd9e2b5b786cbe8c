import { logTarget, targetFields } from '@/lib/readings/import-target'
import type { ReadingField } from '@/lib/readings/reading-field'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { Readings } from '@/shared/records/readings'

/** Seconds since the pass began, as profile recorders write them instead of an instant. */
const ELAPSED = 'elapsedS'

/** The fields a file for a log has to fill. A pass may tell its time in seconds from its start. */
export function logFields(code: string, characteristic: string): ReadingField[] {
  const fields = targetFields(logTarget(code, characteristic))
  if (!findCharacteristic(characteristic)?.comesWhole) return fields
  return [
    ...fields.map((field): ReadingField =>
      field.kind === 'instant'
        ? {
            ...field,
            label: 'Date and time',
            required: false,
            alsoCalled: ['timestamp', 'date time', 'datetime', 'instant', 'utc'],
          }
        : field,
    ),
    {
      kind: 'number',
      name: ELAPSED,
      label: 'Seconds from the start',
      required: false,
      min: 0,
      max: 100_000,
      unit: 's',
      alsoCalled: ['elapsed', 'elapsed time', 'seconds', 'time s', 'time', 't'],
    },
  ]
}

/** Whether the readings tell no instants, only seconds from a start that has to be asked for. */
export const isTimedFromStart = ({ columns }: Readings): boolean =>
  !columns['at']?.length && ELAPSED in columns

/** Readings with their instants: as read, or counted from the start of the pass (epoch milliseconds, or why it is none). */
export function withInstants(
  readings: Readings,
  startedAt: number | { readonly message: string },
): { readonly readings: Readings } | { readonly message: string } {
  const { [ELAPSED]: elapsed, ...columns } = readings.columns
  if (!isTimedFromStart(readings)) {
    return columns['at'] ? { readings: { ...readings, columns } } : { message: NO_TIME }
  }
  if (typeof startedAt !== 'number') return { message: `When did the pass begin? ${startedAt.message}` }
  if (elapsed?.some((seconds) => typeof seconds !== 'number')) return { message: NO_TIME }
  const at = (elapsed ?? []).map((seconds) => startedAt + Math.round(Number(seconds) * 1000))
  return { readings: { ...readings, columns: { at, ...columns } } }
}

const NO_TIME = 'Every row needs its time, or its seconds from the start: choose the column that holds them.'
