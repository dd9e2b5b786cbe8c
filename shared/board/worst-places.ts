import type { Board, NetGap } from './board'
import type { BoardHole } from './hole'
import { outerLands } from './hole-groups'

/** A hole with the narrower of its rings. */
export interface RingPlace {
  readonly hole: BoardHole
  readonly side: 'top' | 'bottom'
  readonly ringMm: number
}

/** How many places a finding leads to. */
export const PLACES = 10

/** Holes for leads with the narrowest rings as drawn, the narrowest first. */
export const narrowestRings = ({ holes }: Board): RingPlace[] =>
  holes
    .filter((hole) => hole.kind === 'component' && outerLands(hole).length > 0)
    .map((hole): RingPlace => {
      const rings = (['top', 'bottom'] as const).flatMap((side) => {
        const land = hole[side]
        return land ? [{ hole, side, ringMm: land.ringMm }] : []
      })
      return rings.reduce((least, other) => (other.ringMm < least.ringMm ? other : least))
    })
    .sort((one, other) => one.ringMm - other.ringMm)
    .slice(0, PLACES)

/** The least gaps of nets on one side, the least first. */
export const leastGaps = ({ gaps }: Board): NetGap[] =>
  [...gaps].sort((one, other) => one.gapMm - other.gapMm).slice(0, PLACES)
