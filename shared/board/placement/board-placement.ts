import type { BoardJoint } from '../board-joints'
import type { Outline } from '../outline'
import { fitPlacement, type PlacedComponent, type PlacementFit, type SaidPlacement } from './fit-placement'

/** Where components are placed, as far as the placement files lie on the board. */
export interface BoardPlacement {
  readonly files: readonly PlacementFit[]
  readonly placed: readonly PlacedComponent[]
}

/** Every placement file held against the board; undefined where there is none. */
export function placementOn(
  files: readonly SaidPlacement[],
  joints: readonly BoardJoint[],
  outline: Outline | undefined,
): BoardPlacement | undefined {
  if (files.length === 0) return undefined
  const fitted = files.map((file) => fitPlacement(file, joints, outline))
  return { files: fitted.map(({ fit }) => fit), placed: fitted.flatMap(({ placed }) => placed) }
}
