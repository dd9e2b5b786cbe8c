import { without } from './geometry/boolean'
import { indexOf } from './geometry/box-index'
import { boxOf, type Box, type Solid } from './geometry/solid'
import type { Drawn } from './gerber/gerber-layer'

/** Copper of one layer: what is left of each thing drawn once everything clear after it is taken out. */
export interface Copper extends Omit<Drawn, 'dark'> {
  readonly box: Box
}

/** A layer's copper with an index of where it is. */
export interface CopperLayer {
  readonly copper: readonly Copper[]
  /** Numbers of the copper whose box meets another box. */
  near(box: Box): number[]
}

/** Things drawn with no width are no copper. */
const hasSize = (solid: Solid): boolean =>
  solid.kind === 'capsule' ? solid.radius > 0 : solid.rings.some((ring) => ring.length >= 6)

export function copperLayer(drawn: readonly Drawn[]): CopperLayer {
  const copper = clearsTaken(drawn.filter(({ solid }) => hasSize(solid)))
  const index = indexOf(copper.map(({ box }) => box))
  return { copper, near: (box) => index?.search(box.minX, box.minY, box.maxX, box.maxY) ?? [] }
}

/** Clear things that follow each other are taken out together, and only of what they meet. */
function clearsTaken(drawn: readonly Drawn[]): Copper[] {
  let copper: Copper[] = []
  let clears: Solid[] = []
  for (const { dark, ...object } of drawn) {
    if (!dark) {
      clears.push(object.solid)
      continue
    }
    if (clears.length > 0) [copper, clears] = [takenOut(copper, clears), []]
    copper.push({ ...object, box: boxOf(object.solid) })
  }
  return clears.length > 0 ? takenOut(copper, clears) : copper
}

function takenOut(copper: readonly Copper[], clears: readonly Solid[]): Copper[] {
  const index = indexOf(clears.map(boxOf))!
  return copper.flatMap((piece) => {
    const { minX, minY, maxX, maxY } = piece.box
    const met = index.search(minX, minY, maxX, maxY)
    if (met.length === 0) return [piece]
    const solid = without(
      [piece.solid],
      met.map((at) => clears[at]!),
    )
    return solid ? [{ ...piece, solid, box: boxOf(solid) }] : []
  })
}
