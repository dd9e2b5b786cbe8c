import { arcPoints } from '../geometry/flattened'
import { ringArea, reversed, transformed, type Point, type Solid } from '../geometry/solid'
import { swept } from '../geometry/swept'
import { moved, placed, type Transform } from '../geometry/transform'
import { READ_LIMITS } from '../read-limits'
import { arcOf } from './arc-sweep'
import type { Drawn, ObjectAttributes } from './gerber-layer'

/** A shape to flash or to draw with: its solids, or the objects of a block. */
export type Aperture = { readonly number: number; readonly use?: readonly string[] | undefined } & (
  | { readonly kind: 'shape'; readonly solids: readonly Solid[] }
  | { readonly kind: 'block'; readonly drawn: readonly Drawn[] }
)

export type Interpolation = 'line' | 'right' | 'left'

/** Why something could not be drawn; the reader adds the line. */
export class Undrawable extends Error {}

/** The graphics state of the format (specification 2.6) and what it has drawn, in mm. */
export class Plotter {
  /** Where objects go: the layer, or the block or repeat that is open. */
  private sinks: Drawn[][] = [[]]
  private count = 0
  private contour: Point[] | undefined
  private inRegion = false
  private regionAttributes: ObjectAttributes = {}
  at: Point = [0, 0]
  aperture: Aperture | undefined
  interpolation: Interpolation = 'line'
  singleQuadrant = false
  dark = true
  mirrorX = false
  mirrorY = false
  rotationDeg = 0
  scale = 1

  get drawn(): readonly Drawn[] {
    return this.sinks[0]!
  }

  private get sink(): Drawn[] {
    return this.sinks.at(-1)!
  }

  private add(drawn: Drawn): void {
    if (++this.count > READ_LIMITS.objects)
      throw new Undrawable(`It comes to more than ${READ_LIMITS.objects} objects.`)
    this.sink.push(drawn)
  }

  move(to: Point): void {
    if (this.inRegion) this.closeContour()
    this.at = to
  }

  draw(to: Point, offset: Point, attributes: ObjectAttributes): void {
    const path = this.pathTo(to, offset)
    if (this.inRegion) {
      this.contour ??= [this.at]
      if (this.contour.length + path.length > READ_LIMITS.points)
        throw new Undrawable(`A region has more than ${READ_LIMITS.points} points.`)
      this.contour.push(...path)
    } else this.stroke(path, attributes)
    this.at = to
  }

  private pathTo(to: Point, offset: Point): Point[] {
    if (this.interpolation === 'line') return [to]
    const arc = arcOf(this.at, to, offset, {
      left: this.interpolation === 'left',
      single: this.singleQuadrant,
    })
    if (!arc) throw new Undrawable('The ends of an arc lie at different distances from its centre.')
    return arcPoints(this.at, to, arc.centre, arc.sweep)
  }

  private stroke(path: readonly Point[], attributes: ObjectAttributes): void {
    const aperture = this.needed()
    if (aperture.kind === 'block')
      throw new Undrawable('A block aperture can only be flashed, not drawn with.')
    const turn = this.placing(0, 0)
    const solids = aperture.solids.map((solid) => transformed(solid, turn))
    let from = this.at
    for (const to of path) {
      for (const solid of solids)
        this.add({
          solid: swept(solid, from, to),
          dark: this.dark,
          by: 'stroke',
          aperture: aperture.number,
          attributes,
        })
      from = to
    }
  }

  flash(to: Point, attributes: ObjectAttributes): void {
    if (this.inRegion) throw new Undrawable('A region holds lines and arcs, not a flash.')
    this.at = to
    const aperture = this.needed()
    const place = this.placing(...to)
    if (aperture.kind === 'shape') {
      for (const solid of aperture.solids)
        this.add({
          solid: transformed(solid, place),
          dark: this.dark,
          by: 'flash',
          aperture: aperture.number,
          attributes,
        })
    } else
      for (const object of aperture.drawn)
        // Flashed clear, a block turns its own polarities over (specification 4.11).
        this.add({ ...object, solid: transformed(object.solid, place), dark: object.dark === this.dark })
  }

  private needed(): Aperture {
    if (!this.aperture) throw new Undrawable('Something is drawn before an aperture is chosen.')
    return this.aperture
  }

  private placing(x: number, y: number): Transform {
    const { mirrorX, mirrorY, rotationDeg, scale } = this
    return placed({ mirrorX, mirrorY, rotationDeg, scale, x, y })
  }

  /** What is said of a region is said where it is opened. */
  openRegion(attributes: ObjectAttributes): void {
    this.inRegion = true
    this.contour = undefined
    this.regionAttributes = attributes
  }

  closeRegion(): void {
    this.closeContour()
    this.inRegion = false
  }

  private closeContour(): void {
    const ring = this.contour?.flat()
    this.contour = undefined
    if (!ring || ring.length < 6) return
    const turns = ringArea(ring)
    if (turns === 0) return
    const solid: Solid = { kind: 'polygon', rings: [turns < 0 ? reversed(ring) : ring] }
    this.add({ solid, dark: this.dark, by: 'region', attributes: this.regionAttributes })
  }

  openBlock(): void {
    if (this.sinks.length > READ_LIMITS.blockDepth)
      throw new Undrawable(`Blocks lie in one another more than ${READ_LIMITS.blockDepth} deep.`)
    this.sinks.push([])
  }

  closeBlock(): readonly Drawn[] {
    if (this.sinks.length < 2) throw new Undrawable('A block or repeat is closed that was not opened.')
    return this.sinks.pop()!
  }

  /** Draws what a step and repeat holds at each of its places (specification 4.12), bottom to top, then to the right. */
  repeat(block: readonly Drawn[], repeats: { x: number; y: number; stepX: number; stepY: number }): void {
    if (block.length === 0) return
    if (this.count + block.length * repeats.x * repeats.y > READ_LIMITS.objects)
      throw new Undrawable(`Repeated, it comes to more than ${READ_LIMITS.objects} objects.`)
    for (let column = 0; column < repeats.x; column++)
      for (let row = 0; row < repeats.y; row++) {
        const place = moved(column * repeats.stepX, row * repeats.stepY)
        for (const object of block) this.add({ ...object, solid: transformed(object.solid, place) })
      }
  }
}
