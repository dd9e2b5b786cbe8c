import { minCopperUm, type BoardCopper } from '@/shared/plan/board-copper'
import type { ConductorRow } from '@/shared/plan/parameters/conductors'
import { namesNet } from '../net-loads'

/** Whether a layer of the files lies inside the board. */
export const sideOfLayer = (layer: string): ConductorRow['layer'] =>
  layer.startsWith('inner') ? 'internal' : 'external'

/**
 * The copper of a net on a layer, µm: what the finished layer has at least, or
 * less where the table of conductors counts on less.
 * Throws RangeError where the board as specified has none there.
 */
export function copperOfLayer(
  { net, layer }: { readonly net: string; readonly layer: string },
  rows: readonly ConductorRow[] | undefined,
  copper: BoardCopper,
): { readonly layer: ConductorRow['layer']; readonly copperUm: number } {
  const side = sideOfLayer(layer)
  const least = minCopperUm(side, copper)
  if (!(least > 0)) throw new RangeError('The board as specified has no copper on this layer.')
  const counted = (rows ?? [])
    .filter((row) => row.layer === side && namesNet(row.net, net))
    .map(({ copperUm }) => copperUm)
  return { layer: side, copperUm: Math.min(least, ...counted) }
}
