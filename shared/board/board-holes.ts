import type { CopperLayer } from './copper'
import { byPlace } from './geometry/by-place'
import type { BoardHole } from './hole'
import { kindOf } from './hole-kind'
import { middleOf, type FoundHole, type JoinedCopper } from './joined-copper'
import type { NetPoint } from './netlist/netlist-file'
import { isInner } from './stack'

interface HolesTerms {
  readonly masks: readonly CopperLayer[]
  /** Places of the netlist; none where it does not lie on the files. */
  readonly listed: readonly NetPoint[]
  netOf(group: number): string
}

/** Every hole with its lands, its kind, and its net and pin as far as a file says them. */
export function boardHoles(joined: JoinedCopper, { masks, listed, netOf }: HolesTerms): BoardHole[] {
  const listedAt = byPlace(
    listed.filter(({ kind }) => kind === 'hole'),
    ({ at }) => at,
  )
  return joined.holes.map((found) =>
    boardHole(found, {
      masks,
      listed: listedAt(middleOf(found.hole))[0],
      netOf: (at) => netOf(joined.groups.of(at)),
    }),
  )
}

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
