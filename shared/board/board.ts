import { groupedBy } from '@/shared/grouped-by'
import { Groups, joinTouching, layerEdges } from './connected'
import { copperLayer, type CopperLayer } from './copper'
import type { Drilled } from './drill/drill-file'
import { gapsOf } from './gaps'
import type { Drawn } from './gerber/gerber-layer'
import type { BoardHole } from './hole'
import { kindOf } from './hole-kind'
import { landOf, type FoundLand } from './lands'
import { outlineOf, type Outline } from './outline'

/** The files of a board once it is known what each is, with what was read from them. */
export interface BoardLayers {
  readonly top: readonly Drawn[] | undefined
  readonly bottom: readonly Drawn[] | undefined
  readonly inner: readonly { readonly layer: number; readonly drawn: readonly Drawn[] }[]
  readonly masks: readonly (readonly Drawn[])[]
  readonly outline: readonly Drawn[] | undefined
  readonly holes: readonly Drilled[]
}

/** Two nets that come near each other on one layer. */
export interface NetGap {
  readonly layer: string
  readonly nets: readonly [string, string]
  readonly gapMm: number
  readonly at: readonly [x: number, y: number]
}

/** Lines of one width on one layer. */
export interface ConductorWidth {
  readonly layer: string
  readonly widthMm: number
  readonly lengthMm: number
  readonly times: number
}

/** What the files say of a board, in mm, as the files place it. */
export interface Board {
  readonly holes: readonly BoardHole[]
  readonly outline: Outline | undefined
  readonly gaps: readonly NetGap[]
  readonly conductors: readonly ConductorWidth[]
  /** Pieces of copper that are joined by plated holes or touch. */
  readonly pieces: number
}

/** How near two nets have to come to be listed, mm. */
export const GAP_REACH_MM = 0.6

interface Layer {
  readonly name: string
  readonly number: number
  readonly copper: CopperLayer
  readonly first: number
}

/** Puts the layers of a board together: lands, rings, kinds of holes, copper that is joined, gaps and outline. */
export function boardOf(layers: BoardLayers): Board {
  const copper = layersOf(layers)
  const masks = layers.masks.map(copperLayer)
  const size = copper.reduce((sum, layer) => sum + layer.copper.copper.length, 0)
  const groups = new Groups(size)
  const lines = copper.map(({ copper: layer, first }) => {
    const edges = layerEdges(layer)
    joinTouching(layer, edges, groups, first)
    return edges
  })
  const found = layers.holes.map((hole) => ({ hole, lands: landsOf(hole, copper) }))
  for (const { hole, lands } of found)
    if (hole.plated !== false) lands.slice(1).forEach(({ at }) => groups.join(lands[0]!.at, at))
  const netOf = netNames(copper, groups)
  return {
    holes: found.map(({ hole, lands }) => boardHole(hole, lands, masks, (at) => netOf(groups.of(at)))),
    outline: layers.outline && outlineOf(layers.outline),
    gaps: copper.flatMap(({ name, first }, at) =>
      gapsOf(lines[at]!, { groups, first, reachMm: GAP_REACH_MM }).map(({ groups: pair, ...gap }) => ({
        ...gap,
        layer: name,
        nets: [netOf(pair[0]), netOf(pair[1])] as const,
      })),
    ),
    conductors: copper.flatMap(conductorsOf),
    pieces: new Set(Array.from({ length: size }, (_, at) => groups.of(at))).size,
  }
}

function layersOf({ top, bottom, inner }: BoardLayers): Layer[] {
  const drawn = [
    ...(top ? [{ name: 'top', number: 0, drawn: top }] : []),
    ...inner.map(({ layer, drawn: lines }) => ({ name: `inner ${layer}`, number: layer, drawn: lines })),
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

interface PlacedLand extends FoundLand {
  readonly layer: Layer
  /** Its number among all copper of the board. */
  readonly at: number
}

const landsOf = (hole: Drilled, layers: readonly Layer[]): PlacedLand[] =>
  layers.flatMap((layer) => {
    const land = landOf(hole, layer.copper)
    return land ? [{ ...land, layer, at: layer.first + land.index }] : []
  })

function boardHole(
  hole: Drilled,
  lands: readonly PlacedLand[],
  masks: readonly CopperLayer[],
  netOf: (at: number) => string,
): BoardHole {
  const on = (name: string) => lands.find(({ layer }) => layer.name === name)?.land
  const said = lands.map(({ drawn }) => drawn.attributes).find(({ component }) => component !== undefined)
  return {
    a: hole.a,
    b: hole.b,
    diameterMm: hole.diameterMm,
    plated: hole.plated,
    ...kindOf(hole, lands, masks),
    top: on('top'),
    bottom: on('bottom'),
    inner: lands.flatMap(({ layer, land }) =>
      layer.number > 0 && Number.isFinite(layer.number) ? [{ layer: layer.number, land }] : [],
    ),
    ...(lands[0] && { net: netOf(lands[0].at) }),
    ...(said?.component !== undefined && { component: said.component }),
    ...(said?.pin !== undefined && { pin: said.pin }),
  }
}

/** A piece of copper has the name its files give it, or a number of its own. */
function netNames(layers: readonly Layer[], groups: Groups): (group: number) => string {
  const names = new Map<number, string>()
  for (const { copper, first } of layers)
    copper.copper.forEach(({ attributes }, at) => {
      const group = groups.of(first + at)
      if (attributes.net !== undefined && !names.has(group)) names.set(group, attributes.net)
    })
  const numbers = new Map<number, number>()
  return (group) => {
    const named = names.get(group)
    if (named !== undefined) return named
    if (!numbers.has(group)) numbers.set(group, numbers.size + 1)
    return `copper ${numbers.get(group)}`
  }
}

function conductorsOf({ name, copper }: Layer): ConductorWidth[] {
  const strokes = copper.copper.flatMap(({ by, solid }) =>
    by === 'stroke' && solid.kind === 'capsule'
      ? [
          {
            widthMm: Math.round(2000 * solid.radius) / 1000,
            lengthMm: Math.hypot(solid.b[0] - solid.a[0], solid.b[1] - solid.a[1]),
          },
        ]
      : [],
  )
  return [...groupedBy(strokes, ({ widthMm }) => widthMm)]
    .map(([widthMm, lines]) => ({
      layer: name,
      widthMm,
      lengthMm: lines.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
      times: lines.length,
    }))
    .sort((one, other) => one.widthMm - other.widthMm)
}
