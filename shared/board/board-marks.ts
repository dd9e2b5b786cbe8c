import type { CopperLayer } from './copper'
import { byPlace } from './geometry/by-place'
import type { Box, Point, Solid } from './geometry/solid'
import { middleOf, type JoinedCopper } from './joined-copper'
import { isOpen } from './land-pairs'
import type { MaskLayer } from './mask-webs'
import type { Layer } from './stack'

/** A land that no part stands on: for a machine to find its place by, or for a probe. */
export interface BoardMark {
  readonly kind: 'fiducial' | 'test point'
  readonly side: 'top' | 'bottom'
  readonly at: Point
  /** The least extent of what is drawn, mm. */
  readonly sizeMm: number
  readonly name?: string
  readonly net?: string
  /** How it is known: the file says it, its name does, or only its shape. */
  readonly by: 'attribute' | 'name' | 'shape'
}

interface MarkTerms {
  readonly masks: readonly MaskLayer[]
  netOf(group: number): string
}

/** Common practice, no published source: fiducials are round, 1 to 3 mm, bare and joined to nothing. */
const FIDUCIAL_MM = [0.95, 3.2] as const

/** How near the middle of a hole has to be for a land to be its land, mm. */
const OVER_HOLE_MM = 0.3

/** Fiducials and test points of both outer sides: as the file says, as their names do, and only then by shape. */
export function boardMarks(joined: JoinedCopper, { masks, netOf }: MarkTerms): BoardMark[] {
  const holeAt = byPlace(joined.holes, ({ hole }) => middleOf(hole), OVER_HOLE_MM)
  const pieces = piecesOf(joined)
  return joined.stack.flatMap((layer): BoardMark[] => {
    const { name: side } = layer
    if (side !== 'top' && side !== 'bottom') return []
    const mask = masks.find((each) => each.side === side)?.openings
    return layer.copper.copper.flatMap(({ by, box, solid, attributes }, at): BoardMark[] => {
      if (by !== 'flash') return []
      const middle = middleOfBox(box)
      const piece = joined.groups.of(layer.first + at)
      const said = byUse(attributes.use?.[0]) ?? byName(attributes.component)
      const found =
        said ??
        (pieces.get(piece) === 1 && holeAt(middle).length === 0 && looksFiducial(solid, middle, mask)
          ? ({ kind: 'fiducial', by: 'shape' } as const)
          : undefined)
      if (!found) return []
      return [
        {
          ...found,
          side,
          at: middle,
          sizeMm: Math.min(box.maxX - box.minX, box.maxY - box.minY),
          ...(attributes.component !== undefined && { name: attributes.component }),
          ...(found.kind === 'test point' && { net: netOf(piece) }),
        },
      ]
    })
  })
}

type Known = Pick<BoardMark, 'kind' | 'by'>

/** Uses of lands (Gerber Layer Format Specification 5.6.10). */
function byUse(use: string | undefined): Known | undefined {
  if (use === 'FiducialPad') return { kind: 'fiducial', by: 'attribute' }
  if (use === 'TestPad') return { kind: 'test point', by: 'attribute' }
  return undefined
}

/** Reference designators as they are given by common practice (no published source). */
function byName(component: string | undefined): Known | undefined {
  if (component === undefined) return undefined
  if (/^FID\d*$/i.test(component)) return { kind: 'fiducial', by: 'name' }
  if (/^TP\d+$/i.test(component)) return { kind: 'test point', by: 'name' }
  return undefined
}

function looksFiducial(solid: Solid, at: Point, mask: CopperLayer | undefined): boolean {
  if (solid.kind !== 'capsule' || solid.a[0] !== solid.b[0] || solid.a[1] !== solid.b[1]) return false
  const [least, most] = FIDUCIAL_MM
  return 2 * solid.radius >= least && 2 * solid.radius <= most && mask !== undefined && isOpen(mask, at)
}

/** Of how many things drawn each piece of copper is. */
function piecesOf({ stack, groups }: JoinedCopper): ReadonlyMap<number, number> {
  const counts = new Map<number, number>()
  const count = ({ first, copper }: Layer): void =>
    copper.copper.forEach((_, at) => {
      const piece = groups.of(first + at)
      counts.set(piece, (counts.get(piece) ?? 0) + 1)
    })
  stack.forEach(count)
  return counts
}

const middleOfBox = ({ minX, minY, maxX, maxY }: Box): Point => [(minX + maxX) / 2, (minY + maxY) / 2]
