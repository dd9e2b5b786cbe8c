import { circleRing, ringsOf } from '../geometry/flattened'
import { disc, reversed, transformed, type Solid } from '../geometry/solid'
import { placed } from '../geometry/transform'
import { rectangle, regularPolygon } from './macro'

/**
 * The shape of a circle, rectangle, obround or polygon aperture round its
 * origin (specification 4.4), in mm; undefined where the
 * template has another name. A hole in it is taken out.
 */
export function standardShape(template: string, modifiers: readonly number[]): Solid[] | undefined {
  const [first = 0, second = 0, third = 0, fourth = 0] = modifiers
  switch (template) {
    case 'C':
      return withHole(disc(0, 0, first / 2), second)
    case 'R':
      return withHole(rectangle(-first / 2, -second / 2, first, second), third)
    case 'O':
      return withHole(obround(first, second), third)
    case 'P':
      return withHole(turnedPolygon(first, second, third), fourth)
    default:
      return undefined
  }
}

function obround(width: number, height: number): Solid {
  const reach = Math.abs(width - height) / 2
  const radius = Math.min(width, height) / 2
  return width >= height
    ? { kind: 'capsule', a: [-reach, 0], b: [reach, 0], radius }
    : { kind: 'capsule', a: [0, -reach], b: [0, reach], radius }
}

const turnedPolygon = (diameter: number, corners: number, rotationDeg: number): Solid =>
  transformed(
    regularPolygon(Math.min(12, Math.max(3, Math.round(corners))), diameter),
    placed({ mirrorX: false, mirrorY: false, rotationDeg, scale: 1, x: 0, y: 0 }),
  )

function withHole(solid: Solid, hole: number): Solid[] {
  if (!(hole > 0)) return [solid]
  return [{ kind: 'polygon', rings: [...ringsOf(solid), reversed(circleRing(0, 0, hole / 2))] }]
}
