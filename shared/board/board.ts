import { conductorsOf, type ConductorWidth } from './conductor-widths'
import { copperLayer, type CopperLayer } from './copper'
import type { Drilled } from './drill/drill-file'
import { gapsOf } from './gaps'
import { byPlace } from './geometry/by-place'
import type { Drawn } from './gerber/gerber-layer'
import type { BoardHole } from './hole'
import { kindOf } from './hole-kind'
import { joinedCopper, middleOf, type FoundHole } from './joined-copper'
import { netNames } from './net-names'
import { checkNetlist, type NetlistCheck } from './netlist/check-netlist'
import type { NetPoint } from './netlist/netlist-file'
import { outlineOf, type Outline } from './outline'
import { isInner, stackOf, type DrawnCopper } from './stack'

/** The files of a board once it is known what each is, with what was read from them. */
export interface BoardLayers extends DrawnCopper {
  readonly masks: readonly (readonly Drawn[])[]
  readonly outline: readonly Drawn[] | undefined
  readonly holes: readonly Drilled[]
  readonly netlist: readonly NetPoint[] | undefined
}

/** Two nets that come near each other on one layer. */
export interface NetGap {
  readonly layer: string
  readonly nets: readonly [string, string]
  readonly gapMm: number
  readonly at: readonly [x: number, y: number]
}

/** What the files say of a board, in mm, as the files place it. */
export interface Board {
  readonly holes: readonly BoardHole[]
  readonly outline: Outline | undefined
  readonly gaps: readonly NetGap[]
  readonly conductors: readonly ConductorWidth[]
  /** Pieces of copper that are joined by plated holes or touch. */
  readonly pieces: number
  /** Holes and copper against the netlist, where there is one. */
  readonly netlist: NetlistCheck | undefined
}

/** How near two nets have to come to be listed, mm. */
export const GAP_REACH_MM = 0.6

/** Puts the layers of a board together: lands, rings, kinds of holes, copper that is joined, gaps and outline. */
export function boardOf(layers: BoardLayers): Board {
  const joined = joinedCopper(stackOf(layers), layers.holes)
  const { stack, lines, groups } = joined
  const checked = layers.netlist && checkNetlist(layers.netlist, joined)
  const netOf = netNames(joined, checked?.netsOfPiece ?? new Map())
  const listedAt = byPlace(checked?.check.liesOn ? holesIn(layers.netlist!) : [], ({ at }) => at)
  const masks = layers.masks.map(copperLayer)
  return {
    holes: joined.holes.map((found) =>
      boardHole(found, {
        masks,
        listed: listedAt(middleOf(found.hole))[0],
        netOf: (at) => netOf(groups.of(at)),
      }),
    ),
    outline: layers.outline && outlineOf(layers.outline),
    gaps: stack.flatMap(({ name, first }, at) =>
      gapsOf(lines[at]!, { groups, first, reachMm: GAP_REACH_MM }).map(({ groups: pair, ...gap }) => ({
        ...gap,
        layer: name,
        nets: [netOf(pair[0]), netOf(pair[1])] as const,
      })),
    ),
    conductors: stack.flatMap(conductorsOf),
    pieces: groups.count,
    netlist: checked?.check,
  }
}

const holesIn = (netlist: readonly NetPoint[]): NetPoint[] => netlist.filter(({ kind }) => kind === 'hole')

interface HoleTerms {
  readonly masks: readonly CopperLayer[]
  /** The hole's place in the netlist. */
  readonly listed: NetPoint | undefined
  netOf(at: number): string
}

function boardHole({ hole, lands }: FoundHole, { masks, listed, netOf }: HoleTerms): BoardHole {
  const on = (name: string) => lands.find(({ layer }) => layer.name === name)?.land
  const said = lands.map(({ drawn }) => drawn.attributes).find(({ component }) => component !== undefined)
  const { component = undefined, pin = undefined } = said ?? listed ?? {}
  return {
    a: hole.a,
    b: hole.b,
    diameterMm: hole.diameterMm,
    plated: hole.plated ?? listed?.plated,
    ...kindOf(hole, { lands, masks, listed }),
    top: on('top'),
    bottom: on('bottom'),
    inner: lands.flatMap(({ layer, land }) => (isInner(layer) ? [{ layer: layer.number, land }] : [])),
    ...(lands[0] && { net: netOf(lands[0].at) }),
    ...(component !== undefined && { component }),
    ...(pin !== undefined && { pin }),
  }
}
