import type { Unit } from './unit'

/** Units that differ by a prefix, each with how many of the first it is. Source: SI Brochure, table 7. */
const LADDERS: readonly Readonly<Record<string, number>>[] = [
  { nm: 1e-9, µm: 1e-6, mm: 1e-3, m: 1 },
  { µg: 1e-6, mg: 1e-3, g: 1, kg: 1e3 },
  { µΩ: 1e-6, mΩ: 1e-3, Ω: 1, kΩ: 1e3, MΩ: 1e6, GΩ: 1e9, TΩ: 1e12 },
  { µV: 1e-6, mV: 1e-3, V: 1, kV: 1e3 },
  { µA: 1e-6, mA: 1e-3, A: 1 },
  { µN: 1e-6, mN: 1e-3, N: 1 },
  { µW: 1e-6, mW: 1e-3, W: 1, kW: 1e3 },
]

/** Between these a number is read as it was given. */
const SMALL = 1e-3
const GREAT = 1e5

/** How a quantity is printed: the unit, and what its numbers are multiplied by for it. */
export interface PrintedIn {
  readonly unit: string
  readonly factor: number
}

/**
 * Another prefix for a quantity whose number is hard to read in its own unit: 0.0004 mm is 0.4 µm, and
 * 1e8 Ω are 100 MΩ. Undefined where its number reads well, or the unit takes no prefix.
 */
export function betterPrefix(value: number, unit: Unit): PrintedIn | undefined {
  const size = Math.abs(value)
  if (size === 0 || !Number.isFinite(size) || (size >= SMALL && size < GREAT)) return undefined
  const ladder = LADDERS.find((one) => unit in one)
  if (!ladder) return undefined
  const own = ladder[unit]!
  const steps = Object.entries(ladder)
  // Coats and offsets of less than a micrometre are given in tenths of it.
  const least = size < SMALL ? 0.1 : 1
  const step = steps.findLast(([, worth]) => size * (own / worth) >= least) ?? steps[0]!
  return step[0] === unit ? undefined : { unit: step[0], factor: own / step[1] }
}
