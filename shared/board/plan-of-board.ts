import type { Board } from './board'
import { jointName } from './board-joints'
import type { Point } from './geometry/solid'

/** A place on the plan of a board, mm from its lower left corner. */
export interface PlanPlace {
  readonly xMm: number
  readonly yMm: number
}

export interface PlanJoint extends PlanPlace {
  /** As a defect names it: "X1-3". */
  readonly name: string
  readonly landMm: number
}

/** A board as inspections look at it: from the soldered side, travelling to the right. */
export interface BoardPlanRead {
  readonly lengthMm: number
  readonly widthMm: number
  readonly outlineMm: readonly PlanPlace[]
  readonly cutoutsMm: readonly (readonly PlanPlace[])[]
  readonly joints: readonly PlanJoint[]
}

/**
 * The plan of a board from its files: its bottom, so that what lies right in the
 * files lies left; turned by a quarter where only so its sides are those
 * specified along and across the travel. Which of two opposite ways it travels
 * the files do not say. Undefined without a closed outline.
 */
export function planOfBoard(
  { outline, joints }: Pick<Board, 'outline' | 'joints'>,
  alongMm: number | undefined,
): BoardPlanRead | undefined {
  if (!outline?.closed) return undefined
  const { minX, minY, maxX, maxY } = outline.box
  const [wide, high] = [maxX - minX, maxY - minY]
  const turned = alongMm !== undefined && Math.abs(alongMm - high) < Math.abs(alongMm - wide)
  const place = ([x, y]: Point): PlanPlace =>
    turned ? planPlace(y - minY, x - minX) : planPlace(maxX - x, y - minY)
  return {
    lengthMm: toHundredth(turned ? high : wide),
    widthMm: toHundredth(turned ? wide : high),
    outlineMm: outline.points.map(place),
    cutoutsMm: outline.cutouts.map((ring) => ring.map(place)),
    joints: joints.flatMap((joint) => {
      const name = jointName(joint)
      return [{ ...place(joint.at), landMm: toHundredth(joint.landMm), name: name ?? '' }]
    }),
  }
}

const planPlace = (xMm: number, yMm: number): PlanPlace => ({ xMm: toHundredth(xMm), yMm: toHundredth(yMm) })
const toHundredth = (mm: number): number => Math.round(mm * 100) / 100

/** The joint that a touch is meant for: the nearest, no farther than a fingertip; undefined where none is. */
export function jointTouched(
  joints: readonly PlanJoint[],
  { xMm, yMm }: PlanPlace,
  reachMm: number,
): PlanJoint | undefined {
  const away = (joint: PlanJoint): number => Math.hypot(joint.xMm - xMm, joint.yMm - yMm)
  const nearest = joints.reduce<PlanJoint | undefined>(
    (least, joint) => (!least || away(joint) < away(least) ? joint : least),
    undefined,
  )
  return nearest && away(nearest) <= Math.max(reachMm, nearest.landMm / 2) ? nearest : undefined
}

/** Joints whose names hold every word of a search, those that begin with it first, then by reference and pin. */
export function jointsFound(joints: readonly PlanJoint[], search: string): PlanJoint[] {
  const words = search
    .toLowerCase()
    .split(/[\s-]+/)
    .filter((word) => word !== '')
  const begins = ({ name }: PlanJoint): number => (name.toLowerCase().startsWith(words.join('-')) ? 0 : 1)
  return joints
    .filter(({ name }) => name !== '' && words.every((word) => name.toLowerCase().includes(word)))
    .sort(
      (one, other) =>
        begins(one) - begins(other) || one.name.localeCompare(other.name, 'en', { numeric: true }),
    )
}
