import type { Gap } from './gaps'
import { gapsOf } from './gaps'
import { layerEdges } from './connected'
import type { JoinedCopper } from './joined-copper'
import { namesNet } from './net-loads'

/** Nets between which gaps are looked for farther than between all: names and patterns, parted by commas. */
export interface WatchedNets {
  readonly names: string
  readonly reachMm: number
}

/** For every layer, the gaps between nets that are watched. */
export function watchedGaps(
  { stack, groups }: JoinedCopper,
  { names, reachMm }: WatchedNets,
  netOf: (group: number) => string,
): Gap[][] {
  const watched = new Map<number, boolean>()
  const isWatched = (group: number): boolean => {
    let known = watched.get(group)
    if (known === undefined) watched.set(group, (known = namesNet(names, netOf(group))))
    return known
  }
  return stack.map(({ copper, first }) => {
    const lines = layerEdges(copper, (at) => isWatched(groups.of(first + at)))
    return gapsOf(lines, { groups, first, reachMm })
  })
}
