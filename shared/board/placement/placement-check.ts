import { groupedBy } from '@/shared/grouped-by'
import { referencesInBrief } from '@/shared/works/references'
import type { BoardJoint } from '../board-joints'
import type { BoardMark } from '../board-marks'
import type { PlacedComponent } from './fit-placement'

/** What placement, parts list and pins can disagree in, the worst first. */
export const PLACEMENT_DIFFERENCES = [
  'placed twice',
  'listed, not placed',
  'on the board, not placed',
  'placed, not listed',
  'on the other side',
  'on another side than listed',
  'away from its pins',
  'one row on both sides',
  'placed, not on the board',
  'one joint, not placed',
] as const
export type PlacementDifferenceKind = (typeof PLACEMENT_DIFFERENCES)[number]

/** One way in which they disagree, with the components that do. */
export interface PlacementDifference {
  readonly kind: PlacementDifferenceKind
  readonly components: readonly DifferentComponent[]
}

export interface DifferentComponent {
  readonly reference: string
  /** How far its centre lies outside of its pins, mm, where that is the difference. */
  readonly awayMm?: number
}

/** One row of a parts list: its references in capitals, and the side that it says. */
export interface ListedNames {
  readonly names: readonly string[]
  readonly side?: 'top' | 'bottom' | undefined
}

/** What stands beside the placement. */
interface Beside {
  readonly joints: readonly BoardJoint[]
  readonly marks: readonly BoardMark[]
  /** The rows of the parts list; undefined where there is no list. */
  readonly list: readonly ListedNames[] | undefined
}

/** A centre farther outside the box of its pins is told of: bodies reach beyond their pins, mm. */
const AWAY_MM = 1

/** Holds what is placed against the parts list and the pins that the board has: each way they differ, the worst first. */
export function placementDifferences(
  placed: readonly PlacedComponent[],
  { joints, marks, list }: Beside,
): PlacementDifference[] {
  const sides = new Map(placed.map(({ reference, side }) => [reference.toUpperCase(), side]))
  const isPlaced = (name: string): boolean => sides.has(name.toUpperCase())
  const pins = groupedBy(
    joints.filter(({ component }) => component !== undefined),
    ({ component }) => component!.toUpperCase(),
  )
  // A bare round land may be one of a part that is not placed: a mark by its shape only is no reason to leave it out.
  const isMark = new Set(marks.flatMap(({ name, by }) => (by === 'shape' ? [] : (name?.toUpperCase() ?? []))))
  const listed = new Set(list?.flatMap(({ names }) => names))
  const unplaced = [...pins].filter(([name]) => !isPlaced(name) && !isMark.has(name) && !listed.has(name))
  const found: Readonly<Record<PlacementDifferenceKind, readonly DifferentComponent[]>> = {
    'placed twice': named(twice(placed.map(({ reference }) => reference.toUpperCase()))),
    'listed, not placed': named([...listed].filter((name) => !isPlaced(name))),
    'on the board, not placed': named(unplaced.filter(([, all]) => all.length > 1).map(([name]) => name)),
    'one joint, not placed': named(unplaced.filter(([, all]) => all.length === 1).map(([name]) => name)),
    'placed, not listed': list ? named([...sides.keys()].filter((name) => !listed.has(name))) : [],
    'on the other side': named(
      placed.filter((each) => isOnOtherSide(each, pins.get(each.reference.toUpperCase()))).map(referenceOf),
    ),
    'away from its pins': placed
      .filter(({ awayMm = 0 }) => awayMm > AWAY_MM)
      .map(({ reference, awayMm }) => ({ reference, awayMm: awayMm! }))
      .sort((one, other) => other.awayMm - one.awayMm),
    'one row on both sides': (list ?? [])
      .filter(({ names }) => new Set(names.flatMap((name) => sides.get(name) ?? [])).size > 1)
      .map(({ names }) => ({ reference: referencesInBrief(names) })),
    'on another side than listed': named(
      (list ?? []).flatMap(({ names, side }) =>
        names.filter(
          (name) => side !== undefined && sides.get(name) !== undefined && sides.get(name) !== side,
        ),
      ),
    ),
    'placed, not on the board':
      pins.size > 0 ? named(placed.map(referenceOf).filter((name) => !pins.has(name.toUpperCase()))) : [],
  }
  return PLACEMENT_DIFFERENCES.map((kind) => ({ kind, components: found[kind] })).filter(
    ({ components }) => components.length > 0,
  )
}

const referenceOf = ({ reference }: PlacedComponent): string => reference

/** Lands on one side only are where a component sits, whatever the file says. */
function isOnOtherSide({ side }: PlacedComponent, joints: readonly BoardJoint[] | undefined): boolean {
  if (!side || !joints) return false
  const lands = new Set(joints.map(({ on }) => on))
  return lands.size === 1 && lands.has(side === 'top' ? 'bottom' : 'top')
}

const twice = (names: readonly string[]): string[] =>
  [...groupedBy(names, (name) => name)].flatMap(([name, all]) => (all.length > 1 ? [name] : []))

const named = (names: readonly string[]): DifferentComponent[] =>
  [...new Set(names)]
    .sort((one, other) => one.localeCompare(other, 'en', { numeric: true }))
    .map((reference) => ({ reference }))
