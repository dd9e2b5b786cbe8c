import type { Board } from '@/shared/board/board'
import type { DrillReading } from '@/shared/board/drill/drill-file'
import type { Passed } from '@/shared/board/gerber/gerber-layer'
import type { PlacementFit } from '@/shared/board/placement/fit-placement'
import type { LengthUnit } from '@/shared/board/placement/length-unit'
import type { ReadFile } from '@/shared/board/read-files'
import type { LayerRole, ProposedRole } from '@/shared/board/layer-role'

/** One file as it is told of: what it holds, what it is taken for, and a picture of it. */
export interface FileTold {
  readonly name: string
  readonly format: ReadFile['format']
  readonly proposed?: ProposedRole
  readonly role?: LayerRole
  /** Things drawn, holes drilled, or places of a netlist. */
  readonly count?: number
  readonly unit?: LengthUnit
  readonly unitAssumed?: boolean
  readonly passed?: readonly Passed[]
  readonly drill?: { readonly reading: DrillReading; readonly assumed: readonly string[] }
  /** Of a placement file: how it lies on the board, and whether it says the side of every component. */
  readonly fit?: PlacementFit
  readonly saysSides?: boolean
  readonly refused?: { readonly line?: number; readonly reason: string }
}

/** What was read from an archive of board files. */
export interface BoardReading {
  readonly files: readonly FileTold[]
  readonly board: Board
  readonly pictures: readonly LayerPicture[]
}

/** One layer as a path, in mm with y downwards. */
export interface LayerPicture {
  /** The code of its role. */
  readonly code: string
  readonly path: string
}
