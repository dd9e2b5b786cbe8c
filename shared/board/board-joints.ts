import type { Point } from './geometry/solid'
import { outerLands } from './hole-groups'
import type { BoardHole } from './hole'
import { middleOf, type JoinedCopper } from './joined-copper'
import type { NetPoint } from './netlist/netlist-file'
import { isInner } from './stack'

/** A place where something is soldered, with its pin as far as a file names it. */
export interface BoardJoint {
  readonly component: string | undefined
  readonly pin: string | undefined
  readonly at: Point
  /** In a hole, or on the land of one side. */
  readonly on: 'hole' | 'top' | 'bottom'
  /** Width of the land across, mm. */
  readonly landMm: number
}

/** Joints in holes for leads, and on lands that the files or the netlist give a pin. */
export function boardJoints(
  { stack, holes: drilled }: JoinedCopper,
  holes: readonly BoardHole[],
  listed: readonly NetPoint[],
): BoardJoint[] {
  const inHoles = holes
    .filter((hole) => hole.kind === 'component' && outerLands(hole).length > 0)
    .map((hole): BoardJoint => ({
      component: hole.component,
      pin: hole.pin,
      at: middleOf(hole),
      on: 'hole',
      landMm: Math.max(...outerLands(hole).map(({ widthMm }) => widthMm)),
    }))
  const underHoles = new Set(drilled.flatMap(({ lands }) => lands.map(({ at }) => at)))
  const onLands = stack
    .filter((layer) => !isInner(layer))
    .flatMap(({ name, copper, first }) =>
      copper.copper.flatMap(({ by, box, attributes: { component, pin } }, index): BoardJoint[] => {
        if (by === 'stroke' || component === undefined || pin === undefined) return []
        if (underHoles.has(first + index)) return []
        const at: Point = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2]
        const landMm = Math.min(box.maxX - box.minX, box.maxY - box.minY)
        return [{ component, pin, at, on: name === 'bottom' ? 'bottom' : 'top', landMm }]
      }),
    )
  return eachOnce([...inHoles, ...(onLands.length > 0 ? onLands : landsListed(listed))])
}

/** Lands as the netlist has them, where no copper file names a pin. */
const landsListed = (listed: readonly NetPoint[]): BoardJoint[] =>
  listed
    .filter(({ kind, component }) => kind === 'land' && component !== undefined)
    .map(({ component, pin, at, layer }) => ({
      component,
      pin,
      at,
      on: layer === 1 ? 'top' : 'bottom',
      landMm: LAND_UNKNOWN_MM,
    }))

/** A land of which only the place is known is drawn so wide, mm. */
const LAND_UNKNOWN_MM = 0.5

/** One pin in several holes or pieces is one joint each; the very same place is one. */
function eachOnce(joints: readonly BoardJoint[]): BoardJoint[] {
  const keyOf = ({ component, pin, on, at: [x, y] }: BoardJoint): string =>
    [component, pin, on, x.toFixed(2), y.toFixed(2)].join(' ')
  return [...new Map(joints.map((joint) => [keyOf(joint), joint])).values()]
}

/** A joint as inspections name it: "X1-3"; undefined where no file names its pin. */
export const jointName = ({ component, pin }: BoardJoint): string | undefined =>
  component === undefined ? undefined : pin === undefined ? component : `${component}-${pin}`
