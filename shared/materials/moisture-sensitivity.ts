import type { Source } from '@/shared/sources/source'

const SOURCE: Source = {
  cite: 'IPC/JEDEC J-STD-033B, Table 5-1, floor life by level',
  how: 'from memory',
}

/**
 * How long a moisture-sensitive part may lie outside its dry pack before
 * soldering, in hours at no more than 30 °C and 60 % relative humidity (level
 * 1: 85 %). `null`: no limit. Level 6 is baked before every use.
 */
export const FLOOR_LIFE = [
  { level: '1', hours: null, atMaxRelativeHumidityPct: 85, source: SOURCE },
  { level: '2', hours: 8760, atMaxRelativeHumidityPct: 60, source: SOURCE },
  { level: '2a', hours: 672, atMaxRelativeHumidityPct: 60, source: SOURCE },
  { level: '3', hours: 168, atMaxRelativeHumidityPct: 60, source: SOURCE },
  { level: '4', hours: 72, atMaxRelativeHumidityPct: 60, source: SOURCE },
  { level: '5', hours: 48, atMaxRelativeHumidityPct: 60, source: SOURCE },
  { level: '5a', hours: 24, atMaxRelativeHumidityPct: 60, source: SOURCE },
  { level: '6', hours: 0, atMaxRelativeHumidityPct: 60, source: SOURCE },
] as const satisfies readonly FloorLife[]

interface FloorLife {
  readonly level: string
  readonly hours: number | null
  readonly atMaxRelativeHumidityPct: number
  readonly source: Source
}
export type MoistureLevel = (typeof FLOOR_LIFE)[number]['level']

/** The warmest the floor may be for the table to hold. */
export const FLOOR_LIFE_AT_MOST_C = 30

export function floorLifeOf(level: MoistureLevel): (typeof FLOOR_LIFE)[number] {
  const row = FLOOR_LIFE.find((entry) => entry.level === level)
  if (!row) throw new RangeError(`There is no moisture sensitivity level ${level}.`)
  return row
}
