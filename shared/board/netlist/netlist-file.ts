import type { Passed } from '../gerber/gerber-layer'
import type { Point } from '../geometry/solid'

/** One place of a net: a hole, a land, or a hole that only holds the board. Lengths in mm. */
export interface NetPoint {
  /** In full, where the file says what a short name stands for; undefined where the place has no net. */
  readonly net: string | undefined
  readonly component?: string
  readonly pin?: string
  readonly via: boolean
  readonly kind: 'hole' | 'land' | 'tooling'
  readonly at: Point
  readonly diameterMm?: number
  readonly plated?: boolean
  /** The copper layer it is reached from, 1 for the top; 0 for both sides. */
  readonly layer: number
  readonly line: number
}

export interface Netlist {
  readonly unit: 'mm' | 'inch'
  /** Whether the file does not say its unit, which is then taken for inches. */
  readonly unitAssumed: boolean
  readonly points: readonly NetPoint[]
  /** Records that are not read. */
  readonly passed: readonly Passed[]
}
