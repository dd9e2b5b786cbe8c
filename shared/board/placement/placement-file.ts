import type { Point } from '../geometry/solid'
import type { LengthUnit } from './length-unit'

/** One component as a placement file has it. */
export interface PlacementRow {
  readonly reference: string
  /** Its centre, in the unit of the file. */
  readonly at: Point
  /** Anticlockwise, degrees, as the file counts them. */
  readonly rotationDeg?: number
  readonly side?: 'top' | 'bottom'
  readonly value?: string
  readonly package?: string
  readonly line: number
}

export interface PlacementFile {
  /** Undefined where the file does not say it. */
  readonly unit: LengthUnit | undefined
  readonly rows: readonly PlacementRow[]
}

/** Whether every row says the side that its component is on. */
export const saysSides = ({ rows }: PlacementFile): boolean => rows.every(({ side }) => side !== undefined)
