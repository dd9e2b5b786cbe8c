import type { CopperLayer } from './copper'
import type { Drilled } from './drill/drill-file'
import type { BoardHole } from './hole'
import { isOpen } from './land-pairs'
import type { FoundLand } from './lands'
import type { NetPoint } from './netlist/netlist-file'

/** A plated hole smaller than this takes no component's lead, mm: common practice, no published source. */
const COMPONENT_MIN_MM = 0.45
/** By size alone this is the greatest via, mm: common practice, no published source. */
const VIA_MAX_MM = 0.55

type Kind = Pick<BoardHole, 'kind' | 'kindBy'>

/**
 * What a hole is for, by the surest witness: the drill file's or the land's own
 * word, no plating, the netlist, the mask open over it, and only then its size, which a
 * person has to confirm.
 */
export function kindOf(
  hole: Drilled,
  {
    lands,
    masks,
    listed,
  }: { lands: readonly FoundLand[]; masks: readonly CopperLayer[]; listed: NetPoint | undefined },
): Kind {
  const said = byUse(hole.use)
  // A part's locating peg goes into a hole of its own, which holds no solder.
  if (hole.plated === false && lands.length === 0) return { kind: 'mounting', kindBy: 'plating' }
  if (said) return { kind: said, kindBy: 'drill file' }
  const ofLand = lands.map(({ drawn }) => byUse(drawn.attributes.use?.[0])).find((kind) => kind !== undefined)
  if (ofLand) return { kind: ofLand, kindBy: 'land' }
  if (hole.plated === false) return { kind: 'mounting', kindBy: 'plating' }
  if (lands.length === 0) return { kind: 'mounting', kindBy: 'land' }
  if (listed) return { kind: listed.via ? 'via' : 'component', kindBy: 'netlist' }
  if (masks.length > 0) {
    const open = masks.some((mask) => isOpen(mask, hole.a))
    if (!open) return { kind: 'via', kindBy: 'mask' }
    if (hole.diameterMm > COMPONENT_MIN_MM) return { kind: 'component', kindBy: 'mask' }
  }
  return { kind: hole.diameterMm <= VIA_MAX_MM ? 'via' : 'component', kindBy: 'size' }
}

/** Uses of holes and lands (Gerber Layer Format Specification 5.6.10). */
function byUse(use: string | undefined): Kind['kind'] | undefined {
  switch (use) {
    case 'ComponentDrill':
    case 'ComponentPad':
      return 'component'
    case 'ViaDrill':
    case 'ViaPad':
      return 'via'
    case 'MechanicalDrill':
    case 'WasherPad':
    case 'Slot':
    case 'CutOut':
      return 'mounting'
    case undefined:
    default:
      return undefined
  }
}
