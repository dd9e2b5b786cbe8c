import type { Source } from '@/shared/sources/source'

/** A damp-heat condition of a surface insulation resistance test. Results under different conditions are not interchangeable. */
interface InsulationCondition {
  readonly label: string
  readonly temperatureC: number
  readonly relativeHumidityPct: number
  /** The hours from which readings count. */
  readonly countsFromHours: number
  /** Hours from one reading to the next at most. */
  readonly maxHoursBetween: number
  /** The last reading the condition asks for. */
  readonly lastsHours: number
  readonly source: Source
}

const TWENTY_MINUTES = 20 / 60

export const INSULATION_CONDITIONS = {
  'j-std-004a': {
    label: 'J-STD-004A: 85 °C, 85 % RH',
    temperatureC: 85,
    relativeHumidityPct: 85,
    countsFromHours: 96,
    maxHoursBetween: 72,
    lastsHours: 168,
    source: { cite: 'J-STD-004A, IPC-TM-650 2.6.3.3: readings at 24, 96 and 168 h', how: 'published' },
  },
  'j-std-004b': {
    label: 'J-STD-004B: 40 °C, 90 % RH',
    temperatureC: 40,
    relativeHumidityPct: 90,
    countsFromHours: 24,
    maxHoursBetween: TWENTY_MINUTES,
    lastsHours: 168,
    source: {
      cite: 'J-STD-004B, IPC-TM-650 2.6.3.7: readings every 20 minutes at 25 V/mm',
      how: 'published',
    },
  },
  'iec-cleaned': {
    label: 'IEC 61189-5-502, cleaned: 85 °C, 85 % RH',
    temperatureC: 85,
    relativeHumidityPct: 85,
    countsFromHours: 24,
    maxHoursBetween: TWENTY_MINUTES,
    lastsHours: 168,
    source: {
      cite: 'IEC 61189-5-502, condition for cleaned boards; read every 20 minutes at least',
      how: 'from memory',
    },
  },
  'iec-not-cleaned': {
    label: 'IEC 61189-5-502, not cleaned: 40 °C, 90 % RH',
    temperatureC: 40,
    relativeHumidityPct: 90,
    countsFromHours: 24,
    maxHoursBetween: TWENTY_MINUTES,
    lastsHours: 168,
    source: {
      cite: 'IEC 61189-5-502, condition for boards that are not cleaned; read every 20 minutes at least',
      how: 'from memory',
    },
  },
} as const satisfies Record<string, InsulationCondition>
export type InsulationConditionKey = keyof typeof INSULATION_CONDITIONS
