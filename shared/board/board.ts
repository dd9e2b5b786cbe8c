import { edgeClearances, wallClearances, type Clearance, type WallClearance } from './clearances'
import { conductorsOf, type ConductorWidth } from './conductor-widths'
import { copperGraph } from './copper-graph'
import { boardHoles } from './board-holes'
import { boardJoints, type BoardJoint } from './board-joints'
import { boardMarks, type BoardMark } from './board-marks'
import { copperLayer } from './copper'
import type { Drilled } from './drill/drill-file'
import { gapsOf, type Gap, type NetGap } from './gaps'
import type { Point } from './geometry/solid'
import type { Drawn } from './gerber/gerber-layer'
import type { BoardHole } from './hole'
import { joinedCopper, pieceAt, type JoinedCopper } from './joined-copper'
import { landGaps, landPairs, type LandPair } from './land-pairs'
import { maskWebs, type MaskLayer, type MaskWeb } from './mask-webs'
import { netConductors, type NetConductor } from './net-conductors'
import { netNames } from './net-names'
import { netPaths, type NetPath } from './net-paths'
import { checkNetlist, type NetlistCheck } from './netlist/check-netlist'
import type { NetPoint } from './netlist/netlist-file'
import { placementOn, type BoardPlacement } from './placement/board-placement'
import type { SaidPlacement } from './placement/fit-placement'
import type { FileListRow } from './placement/read-parts-table'
import { outlineOf, type Outline } from './outline'
import { planeJoints, type PlaneJoint } from './plane-joints'
import { stackOf, type DrawnCopper } from './stack'
import { watchedGaps, type WatchedNets } from './watched-nets'

/** The files of a board once it is known what each is, with what was read from them. */
export interface BoardLayers extends DrawnCopper {
  readonly masks: readonly { readonly side: 'top' | 'bottom'; readonly drawn: readonly Drawn[] }[]
  readonly outline: readonly Drawn[] | undefined
  readonly holes: readonly Drilled[]
  readonly netlist: readonly NetPoint[] | undefined
  readonly placements: readonly SaidPlacement[]
  readonly listed: readonly FileListRow[] | undefined
}

/** What the files say of a board, in mm, as the files place it. */
export interface Board {
  readonly holes: readonly BoardHole[]
  /** Where something is soldered. */
  readonly joints: readonly BoardJoint[]
  readonly outline: Outline | undefined
  /** The copper layers that were read, from the top. */
  readonly layers: readonly string[]
  readonly gaps: readonly NetGap[]
  /** Nets between which gaps are listed beyond the reach for all. */
  readonly watched: WatchedNets | undefined
  /** Gaps between bare lands on the side that a wave would meet. */
  readonly landGaps: readonly NetGap[]
  /** The same lands, each two that lie beside each other. */
  readonly landPairs: readonly LandPair[]
  /** The sides that have a solder mask with openings. */
  readonly masked: readonly ('top' | 'bottom')[]
  /** Solder mask between openings. */
  readonly maskWebs: readonly MaskWeb[]
  /** Plated holes for leads in large copper. */
  readonly planeJoints: readonly PlaneJoint[]
  /** Fiducials and test points. */
  readonly marks: readonly BoardMark[]
  /** Copper near the outline and its cut-outs; none where the outline is open or not found. */
  readonly edges: readonly Clearance[]
  /** Copper near holes without plating. */
  readonly walls: readonly WallClearance[]
  readonly conductors: readonly ConductorWidth[]
  /** The names of all pieces of copper. */
  readonly nets: readonly string[]
  /** The narrowest conductor of each net on each layer. */
  readonly netConductors: readonly NetConductor[]
  /** Of nets with two pins, the longest way over copper between two. */
  readonly netPaths: readonly NetPath[]
  /** Pieces of copper that are joined by plated holes or touch. */
  readonly pieces: number
  /** Holes and copper against the netlist, where there is one. */
  readonly netlist: NetlistCheck | undefined
  /** Undefined where no file places components. */
  readonly placement: BoardPlacement | undefined
  /** The parts list among the files, where there is one. */
  readonly listed: readonly FileListRow[] | undefined
}

/** How near two nets have to come to be listed, mm. */
export const GAP_REACH_MM = 0.6
/** How near bare lands have to come to be listed as lying beside each other, mm. */
export const PAIR_REACH_MM = 1.5

/** Puts the layers of a board together: lands, rings, kinds of holes, copper that is joined, gaps and outline. */
export function boardOf(layers: BoardLayers, watched?: WatchedNets): Board {
  const joined = joinedCopper(stackOf(layers), layers.holes)
  const checked = layers.netlist && checkNetlist(layers.netlist, joined)
  const netOf = netNames(joined, checked?.netsOfPiece ?? new Map<number, string[]>())
  const masks = layers.masks.map(({ side, drawn }): MaskLayer => ({ side, openings: copperLayer(drawn) }))
  const listed = checked?.check.liesOn ? layers.netlist! : []
  const holes = boardHoles(joined, {
    masks: masks.map(({ openings }) => openings),
    listed,
    netOf,
  })
  const outline = layers.outline && outlineOf(layers.outline)
  const pairs = pairsOfLands(joined, { masks, holes, netOf })
  const nameAt = (side: string, at: Point): string | undefined => {
    const layer = joined.stack.find(({ name }) => name === side)
    const piece = layer && pieceAt(joined, layer, at)
    return piece === undefined ? undefined : netOf(piece)
  }
  const joints = boardJoints(joined, holes, listed)
  return {
    holes,
    joints,
    outline,
    layers: joined.stack.map(({ name }) => name),
    gaps: gapsOfNets(joined, netOf, watched),
    watched,
    landGaps: landGaps(pairs, GAP_REACH_MM),
    landPairs: pairs,
    masked: masks.flatMap(({ side, openings }) => (openings.copper.length > 0 ? [side] : [])),
    maskWebs: maskWebs(masks, nameAt),
    planeJoints: planeJoints(joined, (hole) => holes[hole]!.kind === 'component'),
    marks: boardMarks(joined, { masks, netOf }),
    edges: outline?.closed ? edgeClearances(joined, outline, netOf) : [],
    walls: wallClearances(joined, netOf),
    conductors: joined.stack.flatMap(conductorsOf),
    netConductors: netConductors(joined, netOf),
    netPaths: netPaths(joined, copperGraph(joined), {
      netOf,
      isPin: (hole) => holes[hole]!.kind === 'component',
    }),
    pieces: joined.groups.count,
    netlist: checked?.check,
    placement: placementOn(layers.placements, joints, outline),
    listed: layers.listed,
    // Last, since copper without a name is numbered as it is asked for.
    nets: netsOf(joined, netOf),
  }
}

type NetOf = (group: number) => string

/** Least gaps of all pairs within the reach for all, and of watched pairs within theirs: the smallest of a layer first. */
function gapsOfNets(joined: JoinedCopper, netOf: NetOf, watched: WatchedNets | undefined): NetGap[] {
  const { stack, lines, groups } = joined
  const wide = watched && watched.reachMm > GAP_REACH_MM ? watchedGaps(joined, watched, netOf) : []
  return stack.flatMap(({ name, first }, at) => {
    const near = gapsOf(lines[at]!, { groups, first, reachMm: GAP_REACH_MM })
    const listed = new Set(near.map(pairOf))
    const farther = (wide[at] ?? []).filter((gap) => !listed.has(pairOf(gap)))
    return [...near, ...farther].map(({ groups: [one, other], gapMm, at: place, ends }): NetGap => ({
      layer: name,
      nets: [netOf(one), netOf(other)],
      gapMm,
      at: place,
      ends,
    }))
  })
}

const netsOf = ({ stack, groups }: JoinedCopper, netOf: NetOf): string[] => {
  const all = stack.flatMap(({ copper, first }) => copper.copper.map((_, at) => groups.of(first + at)))
  return [...new Set([...new Set(all)].map(netOf))]
}

const pairOf = ({ groups }: Gap): string => groups.join()

interface PairTerms {
  readonly masks: readonly MaskLayer[]
  readonly holes: readonly BoardHole[]
  readonly netOf: NetOf
}

/** The bottom meets the wave, where there is one. */
function pairsOfLands(joined: JoinedCopper, { masks, holes, netOf }: PairTerms): LandPair[] {
  const side = joined.stack.some(({ name }) => name === 'bottom') ? 'bottom' : 'top'
  const ofLeads = joined.holes.filter((_, at) => holes[at]!.kind === 'component')
  const lands = ofLeads.flatMap(({ lands: all }) => all.filter(({ layer }) => layer.name === side))
  return landPairs(joined, side, {
    mask: masks.find((mask) => mask.side === side)?.openings,
    leadLands: new Set(lands.map(({ index }) => index)),
    reachMm: PAIR_REACH_MM,
    netOf,
  })
}
