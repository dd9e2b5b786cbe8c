import { groupedBy } from '@/shared/grouped-by'
import type { BoardHole, Land } from './hole'

/** Holes that are alike: one row of the specification's table of holes and leads. */
export interface HoleGroup {
  readonly kind: BoardHole['kind']
  readonly plated: boolean | undefined
  /** Drilled or finished as the file has it, mm; the width of a slot. */
  readonly diameterMm: number
  /** Of a slot, mm; as long as wide where it is a round hole. */
  readonly lengthMm: number
  /** The narrower of both outer lands, mm; undefined where there is none. */
  readonly landMm: number | undefined
  /** The least ring of all of them, on either side, mm. */
  readonly ringMm: number | undefined
  readonly holes: readonly BoardHole[]
  /** Reference designators, where the files say them. */
  readonly components: readonly string[]
  /** Whether all are known by more than their size. */
  readonly kindSure: boolean
}

/** Sizes nearer than this are one size, mm: drill files round inches to 1.3 µm. */
const ALIKE_MM = 0.01
const rounded = (mm: number): number => Math.round(mm / ALIKE_MM) * ALIKE_MM

/** Holes by what they are for, their size and their land, the most numerous first. */
export function holeGroups(holes: readonly BoardHole[]): HoleGroup[] {
  const keyOf = (hole: BoardHole): string =>
    [
      hole.kind,
      hole.plated,
      rounded(hole.diameterMm),
      rounded(lengthOf(hole)),
      rounded(narrowestLand(hole) ?? 0),
    ].join(' ')
  return [...groupedBy(holes, keyOf).values()]
    .map((alike) => groupOf(alike))
    .sort((one, other) => other.holes.length - one.holes.length || one.diameterMm - other.diameterMm)
}

function groupOf(holes: readonly BoardHole[]): HoleGroup {
  const first = holes[0]!
  const rings = holes.flatMap(ringsOfHole)
  return {
    kind: first.kind,
    plated: first.plated,
    diameterMm: first.diameterMm,
    lengthMm: lengthOf(first),
    landMm: narrowestLand(first),
    ringMm: rings.length > 0 ? Math.min(...rings) : undefined,
    holes,
    components: [...new Set(holes.flatMap(({ component }) => component ?? []))].sort(inOrder),
    kindSure: holes.every(({ kindBy }) => kindBy !== 'size'),
  }
}

const inOrder = (one: string, other: string): number => one.localeCompare(other, 'en', { numeric: true })
const lengthOf = ({ a, b, diameterMm }: BoardHole): number =>
  Math.hypot(b[0] - a[0], b[1] - a[1]) + diameterMm

export const outerLands = ({ top, bottom }: BoardHole): Land[] =>
  [top, bottom].filter((land) => land !== undefined)

/** The width of the narrower outer land, mm; undefined where there is none. */
export const narrowestLand = (hole: BoardHole): number | undefined => {
  const widths = outerLands(hole).map(({ widthMm }) => widthMm)
  return widths.length > 0 ? Math.min(...widths) : undefined
}
export const ringsOfHole = (hole: BoardHole): number[] => outerLands(hole).map(({ ringMm }) => ringMm)
