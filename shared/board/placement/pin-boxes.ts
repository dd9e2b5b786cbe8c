import type { BoardJoint } from '../board-joints'
import type { Box, Point } from '../geometry/solid'

/** Where the pins of each component lie, by its reference in capitals, mm. */
export type Pins = ReadonlyMap<string, Box>

/** The box round the pins of each component, by its reference in capitals. */
export function boxesOfPins(joints: readonly BoardJoint[]): Pins {
  const boxes = new Map<string, Box>()
  for (const { component, at } of joints) {
    if (component === undefined) continue
    const box = boxes.get(component.toUpperCase())
    boxes.set(component.toUpperCase(), {
      minX: Math.min(box?.minX ?? Infinity, at[0]),
      minY: Math.min(box?.minY ?? Infinity, at[1]),
      maxX: Math.max(box?.maxX ?? -Infinity, at[0]),
      maxY: Math.max(box?.maxY ?? -Infinity, at[1]),
    })
  }
  return boxes
}

/** How far a place lies outside of a box, mm; 0 within it. */
export function outside({ minX, minY, maxX, maxY }: Box, [x, y]: Point): number {
  return Math.hypot(Math.max(minX - x, 0, x - maxX), Math.max(minY - y, 0, y - maxY))
}
