import Flatbush from 'flatbush'
import type { Box } from './solid'

/** An index of boxes; undefined where there is none, which the library takes for an error. */
export function indexOf(boxes: readonly Box[]): Flatbush | undefined {
  if (boxes.length === 0) return undefined
  const index = new Flatbush(boxes.length)
  for (const { minX, minY, maxX, maxY } of boxes) index.add(minX, minY, maxX, maxY)
  index.finish()
  return index
}
