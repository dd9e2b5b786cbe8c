import { copperLayer, type CopperLayer } from './copper'
import type { Drawn } from './gerber/gerber-layer'

/** Copper layers as their files have them; inner ones by their number from the top. */
export interface DrawnCopper {
  readonly top: readonly Drawn[] | undefined
  readonly bottom: readonly Drawn[] | undefined
  readonly inner: readonly { readonly layer: number; readonly drawn: readonly Drawn[] }[]
}

/** One copper layer of a board. */
export interface Layer {
  readonly name: string
  /** From the top, 0, to the bottom, which is without end. */
  readonly number: number
  readonly copper: CopperLayer
  /** How much copper of other layers is numbered before it. */
  readonly first: number
}

/** The copper layers of a board from the top, their copper numbered through. */
export function stackOf({ top, bottom, inner }: DrawnCopper): Layer[] {
  const drawn = [
    ...(top ? [{ name: 'top', number: 0, drawn: top }] : []),
    ...[...inner]
      .sort((one, other) => one.layer - other.layer)
      .map(({ layer, drawn: lines }) => ({ name: `inner ${layer}`, number: layer, drawn: lines })),
    ...(bottom ? [{ name: 'bottom', number: Infinity, drawn: bottom }] : []),
  ]
  let first = 0
  return drawn.map(({ name, number, drawn: lines }) => {
    const copper = copperLayer(lines)
    const layer = { name, number, copper, first }
    first += copper.copper.length
    return layer
  })
}

/** How much copper a board has in all. */
export const copperCount = (stack: readonly Layer[]): number =>
  stack.reduce((sum, { copper }) => sum + copper.copper.length, 0)

export const isInner = ({ number }: Layer): boolean => number > 0 && Number.isFinite(number)
