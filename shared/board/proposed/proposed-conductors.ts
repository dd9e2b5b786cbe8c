import type { ConductorRow } from '@/shared/plan/parameters/conductors'
import type { NetClass } from '@/shared/plan/parameters/net-classes'
import type { Board } from '../board'
import { namesNet, netLoad } from '../net-loads'

type Proposed = Partial<ConductorRow>
type Layer = ConductorRow['layer']

/**
 * The table of conductors as the board's files have it: rows that stand take the
 * narrowest width and the length of the way from the nets they name; a net that
 * is stated to carry current and stands in no row gets one a kind of layer.
 */
export function proposedConductors(
  { netConductors, netPaths }: Pick<Board, 'netConductors' | 'netPaths'>,
  before: readonly ConductorRow[],
  classes: readonly NetClass[],
): Proposed[] {
  const measured = (names: (net: string) => boolean, layer: Layer): Proposed => {
    const widths = netConductors
      .filter((each) => names(each.net) && sideOf(each.layer) === layer)
      .map(({ widthMm }) => widthMm)
    if (widths.length === 0) return {}
    const lengths = netPaths.filter(({ net }) => names(net)).map(({ lengthMm }) => lengthMm)
    const longest = toTenth(Math.max(0, ...lengths))
    return { widthMm: Math.min(...widths), ...(longest > 0 && { lengthMm: longest }) }
  }
  const kept = before.map((row): Proposed => ({
    ...row,
    ...measured((net) => namesNet(row.net, net), row.layer),
  }))
  const carrying = [...new Set(netConductors.map(({ net }) => net))].filter(
    (net) => netLoad(net, classes).currentA !== undefined,
  )
  const added = carrying.flatMap((net) =>
    LAYERS.flatMap((layer): Proposed[] => {
      if (before.some((row) => row.layer === layer && namesNet(row.net, net))) return []
      const found = measured((each) => each === net, layer)
      if (found.widthMm === undefined) return []
      const { currentA, dropMostMv } = netLoad(net, classes)
      return [{ net, layer, ...found, currentA: currentA!, ...(dropMostMv !== undefined && { dropMostMv }) }]
    }),
  )
  return [...kept, ...added]
}

const LAYERS: readonly Layer[] = ['external', 'internal']
const sideOf = (layer: string): Layer => (layer.startsWith('inner') ? 'internal' : 'external')
const toTenth = (mm: number): number => Math.round(mm * 10) / 10
