import { unionOf, without } from '../geometry/boolean'
import { circleRing } from '../geometry/flattened'
import { disc, ringArea, reversed, transformed, type Ring, type Solid } from '../geometry/solid'
import { placed } from '../geometry/transform'
import { READ_LIMITS } from '../read-limits'
import { macroValue } from './macro-expression'

/** No length, angle or number of corners of a macro is greater. */
const VALUE_MAX = 1e6

/** One primitive of a macro: dark adds, clear takes out what the macro drew before. */
interface Part {
  readonly dark: boolean
  readonly solids: readonly Solid[]
}

/**
 * The shape of an aperture macro with these parameters, round its origin, in
 * mm (specification 4.5). Every primitive turns round the origin.
 *
 * Errors: the reason as text, where the macro cannot be drawn.
 */
export function macroShape(
  blocks: readonly string[],
  parameters: readonly number[],
  mmPerUnit: number,
): Solid[] | string {
  if (blocks.length > READ_LIMITS.macroParts) return `it has more than ${READ_LIMITS.macroParts} primitives`
  const variables = new Map(parameters.map((value, index) => [index + 1, value]))
  let solids: Solid[] = []
  for (const block of blocks) {
    const assigned = /^\$(\d+)=(.+)$/.exec(block)
    if (assigned) {
      variables.set(Number(assigned[1]), macroValue(assigned[2]!, variables))
      continue
    }
    if (block.startsWith('0')) continue
    const [code, ...values] = block.split(',').map((field) => macroValue(field, variables))
    if (values.some((value) => !(Math.abs(value) <= VALUE_MAX)))
      return `“${block.slice(0, 40)}” of the macro cannot be worked out`
    const part = partOf(code!, values, mmPerUnit)
    if (typeof part === 'string') return part
    if (part.dark) solids.push(...part.solids)
    else {
      const left = solids.length === 0 ? undefined : without(solids, part.solids)
      solids = left ? [left] : []
    }
  }
  return solids
}

function partOf(code: number, values: readonly number[], mmPerUnit: number): Part | string {
  const at = (index: number): number => values[index] ?? 0
  const mm = (index: number): number => at(index) * mmPerUnit
  const dark = at(0) !== 0
  switch (code) {
    case 1:
      return { dark, solids: turned([disc(mm(2), mm(3), mm(1) / 2)], at(4)) }
    case 2:
    case 20:
      return { dark, solids: turned([bar([mm(2), mm(3)], [mm(4), mm(5)], mm(1))], at(6)) }
    case 21:
      return { dark, solids: turned([rectangle(mm(3) - mm(1) / 2, mm(4) - mm(2) / 2, mm(1), mm(2))], at(5)) }
    case 22:
      return { dark, solids: turned([rectangle(mm(3), mm(4), mm(1), mm(2))], at(5)) }
    case 4: {
      const corners = at(1)
      if (!Number.isInteger(corners) || corners < 3 || values.length < 2 * corners + 4)
        return 'an outline of the macro lacks points'
      const ring = values.slice(2, 2 + 2 * corners).map((value) => value * mmPerUnit)
      return { dark, solids: turned([polygon(ring)], at(2 * corners + 4)) }
    }
    case 5: {
      if (!(at(1) >= 3 && at(1) <= 12))
        return 'a polygon of the macro has fewer than 3 or more than 12 corners'
      return { dark, solids: turned([regularPolygon(at(1), mm(4), mm(2), mm(3))], at(5)) }
    }
    case 6: {
      const [x, y, outer, thick, gap, cross, length] = [0, 1, 2, 3, 4, 6, 7].map(mm)
      if (outer! > READ_LIMITS.apertureMm) return 'a target of the macro is larger than any board'
      const solids = moire(
        { x: x!, y: y!, outer: outer!, thick: thick!, gap: gap!, cross: cross!, length: length! },
        at(5),
      )
      return { dark: true, solids: turned(solids, at(8)) }
    }
    case 7:
      return { dark: true, solids: turned(thermal(mm(0), mm(1), mm(2), mm(3), mm(4)), at(5)) }
    default:
      return `the macro has a primitive ${code}, which no edition of the format knows`
  }
}

const turned = (solids: readonly Solid[], rotationDeg: number): Solid[] =>
  rotationDeg === 0
    ? [...solids]
    : solids.map((solid) =>
        transformed(solid, placed({ mirrorX: false, mirrorY: false, rotationDeg, scale: 1, x: 0, y: 0 })),
      )

/** A ring as a polygon that turns to the left, whichever way it was drawn. */
export const polygon = (ring: Ring): Solid => ({
  kind: 'polygon',
  rings: [ringArea(ring) < 0 ? reversed(ring) : ring],
})

export const rectangle = (x: number, y: number, width: number, height: number): Solid =>
  polygon([x, y, x + width, y, x + width, y + height, x, y + height])

/** A line of a width with square ends that do not reach beyond it. */
export function bar(a: readonly [number, number], b: readonly [number, number], width: number): Solid {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1])
  if (length === 0) return { kind: 'polygon', rings: [] }
  const [nx, ny] = [((a[1] - b[1]) / length) * (width / 2), ((b[0] - a[0]) / length) * (width / 2)]
  return polygon([a[0] + nx, a[1] + ny, a[0] - nx, a[1] - ny, b[0] - nx, b[1] - ny, b[0] + nx, b[1] + ny])
}

export function regularPolygon(corners: number, diameter: number, x = 0, y = 0): Solid {
  const ring = Array.from({ length: corners }, (_, index) => {
    const angle = (2 * Math.PI * index) / corners
    return [x + (diameter / 2) * Math.cos(angle), y + (diameter / 2) * Math.sin(angle)]
  })
  return polygon(ring.flat())
}

const annulus = (x: number, y: number, outer: number, inner: number): Solid => ({
  kind: 'polygon',
  rings: inner > 0 ? [circleRing(x, y, outer), reversed(circleRing(x, y, inner))] : [circleRing(x, y, outer)],
})

/** A disc with a disc taken out and four gaps across both axes. */
function thermal(x: number, y: number, outer: number, inner: number, gap: number): Solid[] {
  const left = without(
    [annulus(x, y, outer / 2, inner / 2)],
    [rectangle(x - outer, y - gap / 2, 2 * outer, gap), rectangle(x - gap / 2, y - outer, gap, 2 * outer)],
  )
  return left ? [left] : []
}

interface Moire {
  x: number
  y: number
  outer: number
  thick: number
  gap: number
  cross: number
  length: number
}

/** Beyond these the rings of a target are one grey. */
const MOIRE_RINGS_MAX = 100

/** Rings round a centre with a cross through them. */
function moire({ x, y, outer, thick, gap, cross, length }: Moire, ringsMax: number): Solid[] {
  const solids: Solid[] = []
  for (let ring = 0, radius = outer / 2; ring < Math.min(ringsMax, MOIRE_RINGS_MAX) && radius > 0; ring++) {
    solids.push(annulus(x, y, radius, Math.max(0, radius - thick)))
    radius -= thick + gap
  }
  solids.push(rectangle(x - length / 2, y - cross / 2, length, cross))
  solids.push(rectangle(x - cross / 2, y - length / 2, cross, length))
  const rings = unionOf(solids)
  return rings.length > 0 ? [{ kind: 'polygon', rings }] : []
}
