import { requirePositive } from '@/shared/statistics/argument-checks'

/** A repeated swing of temperature. The swing is what the joint sees each cycle, not the range of the year. */
export interface ThermalCycle {
  readonly swingK: number
  readonly maximumC: number
  readonly cyclesPerDay: number
  /** Time at the hot end of a cycle. */
  readonly dwellMin?: number
}

const ABSOLUTE_ZERO_C = -273.15

/** Hottest temperature in kelvin. Refuses a swing of nothing and a cycle that never comes. */
export function requireCycle({ swingK, maximumC, cyclesPerDay, dwellMin }: ThermalCycle): {
  maximumK: number
} {
  requirePositive(swingK, 'swing of temperature')
  requirePositive(cyclesPerDay, 'number of cycles a day')
  if (dwellMin !== undefined) requirePositive(dwellMin, 'dwell')
  if (!(maximumC > ABSOLUTE_ZERO_C && maximumC < Infinity))
    throw new RangeError(`A temperature must lie above −273.15 °C; it is ${maximumC}.`)
  return { maximumK: maximumC - ABSOLUTE_ZERO_C }
}
