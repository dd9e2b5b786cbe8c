import { groupedBy } from '@/shared/grouped-by'
import type { ListedRow } from '@/shared/plan/parameters/parts-list'
import { partsOnBoard } from '@/shared/works/parts-on-board'
import type { BoardJoint } from './board-joints'
import type { Point } from './geometry/solid'
import type { PlacedComponent } from './placement/fit-placement'

/** The joints of one component, and how the parts list has it. */
export interface ComponentJoints {
  readonly component: string
  readonly inHoles: number
  readonly onTop: number
  readonly onBottom: number
  /** Where the component sits: as the parts list says, else the placement, else where its lands are; a hole does not tell. */
  readonly side: 'top' | 'bottom' | undefined
  /** Its centre, mm, where a placement file places it. */
  readonly at: Point | undefined
  /** As the parts list says. */
  readonly soldered: ListedRow['soldered']
}

/** Every component of the files by its reference. */
export function jointsByComponent(
  joints: readonly BoardJoint[],
  list: readonly ListedRow[],
  placed: readonly PlacedComponent[] = [],
): ComponentJoints[] {
  const listed = listedByReference(list)
  const placedAs = new Map(placed.map((each) => [each.reference.toUpperCase(), each]))
  const named = joints.flatMap((joint) => (joint.component === undefined ? [] : [joint as Named]))
  return [...groupedBy(named, ({ component }) => component)]
    .map(([component, all]) => {
      const count = (on: BoardJoint['on']) => all.filter((joint) => joint.on === on).length
      const [inHoles, onTop, onBottom] = [count('hole'), count('top'), count('bottom')]
      const row = listed.get(component.toUpperCase())
      const place = placedAs.get(component.toUpperCase())
      return {
        component,
        inHoles,
        onTop,
        onBottom,
        side: row?.side ?? place?.side ?? (onTop > 0 ? 'top' : onBottom > 0 ? 'bottom' : undefined),
        at: place?.at,
        soldered: row?.soldered,
      } as const
    })
    .sort((one, other) => one.component.localeCompare(other.component, 'en', { numeric: true }))
}

type Named = BoardJoint & { readonly component: string }

/** By references in capitals, which do not tell names apart. */
const listedByReference = (list: readonly ListedRow[]): ReadonlyMap<string, ListedRow> =>
  new Map(partsOnBoard(list, []).flatMap(({ names, row }) => names.map((name) => [name, row] as const)))

/** Joints of a board, added up. */
export interface JointCount {
  readonly soldered: ListedRow['soldered']
  readonly side: ComponentJoints['side']
  readonly components: number
  readonly inHoles: number
  readonly onLands: number
}

/** The joints by how and on which side they are soldered, as far as that is known. */
export const jointCounts = (components: readonly ComponentJoints[]): JointCount[] =>
  [...groupedBy(components, ({ soldered, side }) => `${soldered} ${side}`).values()].map((alike) => ({
    soldered: alike[0]!.soldered,
    side: alike[0]!.side,
    components: alike.length,
    inHoles: alike.reduce((sum, { inHoles }) => sum + inHoles, 0),
    onLands: alike.reduce((sum, { onTop, onBottom }) => sum + onTop + onBottom, 0),
  }))

/** References that the parts list has and the files have not, and the other way round. */
export interface ReferenceDifferences {
  readonly onlyListed: readonly string[]
  readonly onlyInFiles: readonly string[]
  /** Joints whose component no file names. */
  readonly nameless: number
}

export function referenceDifferences(
  joints: readonly BoardJoint[],
  list: readonly ListedRow[],
): ReferenceDifferences {
  const listed = [...listedByReference(list).keys()]
  const drawn = [...new Set(joints.flatMap(({ component }) => component ?? []))]
  return {
    onlyListed: without(listed, drawn),
    onlyInFiles: without(drawn, listed),
    nameless: joints.filter(({ component }) => component === undefined).length,
  }
}

function without(these: readonly string[], those: readonly string[]): string[] {
  const known = new Set(those.map((name) => name.toUpperCase()))
  return these
    .filter((name) => !known.has(name.toUpperCase()))
    .sort((one, other) => one.localeCompare(other, 'en', { numeric: true }))
}
