import type { ComponentPlace } from '@/shared/plan/parameters/assessment-inspection'
import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import {
  directionEffect,
  type DefectsByClass,
  type DirectionEffect,
} from '@/shared/statistics/comparison/direction-effect'
import { componentOfJoint } from './component-of-joint'
import type { DefectRecord } from './defect-record'

/** Joints sorted into classes by how they lie, with the test whether one class is worse. */
export interface DirectionComparison {
  readonly key: 'rows' | 'place'
  readonly title: string
  readonly classes: readonly DefectsByClass[]
  /** Absent while no defect falls into these classes. */
  readonly effect: DirectionEffect | undefined
}

type Place = (component: ComponentPlace) => string | undefined

const BY_ROW: Record<ComponentPlace['row'], string | undefined> = {
  along: 'rows along the travel',
  across: 'rows across the travel',
  neither: undefined,
}

/**
 * Whether defects gather in rows that lie across the travel, or towards one end
 * of the board: every joint of a class counts as seen once on each assembly.
 * The board travels to the right, so that its right end meets the solder first.
 * A comparison with fewer than two classes is left out.
 */
export function defectsByDirection(
  record: DefectRecord,
  holes: readonly Pick<LeadHole, 'component' | 'joints'>[],
  places: readonly ComponentPlace[],
  boardLengthMm: number | undefined,
): DirectionComparison[] {
  const comparisons: [DirectionComparison['key'], string, Place][] = [
    ['rows', 'Way the rows lie', ({ row }) => BY_ROW[row]],
  ]
  if (boardLengthMm !== undefined)
    comparisons.push([
      'place',
      'Place along the travel',
      ({ xMm }) =>
        xMm === undefined ? undefined : xMm >= boardLengthMm / 2 ? 'leading half' : 'trailing half',
    ])
  return comparisons.flatMap(([key, title, classOf]) => {
    const classes = classesOf(record, holes, places, classOf)
    return classes.length < 2 ? [] : [{ key, title, classes, effect: directionEffect(classes) }]
  })
}

function classesOf(
  { defectiveJoints, assembliesSeen }: DefectRecord,
  holes: readonly Pick<LeadHole, 'component' | 'joints'>[],
  places: readonly ComponentPlace[],
  classOf: Place,
): DefectsByClass[] {
  const names = holes.map(({ component }) => component)
  const classByComponent = new Map(
    places.map((place) => [place.component.trim().toLowerCase(), classOf(place)] as const),
  )
  const classOfComponent = (component: string | undefined) =>
    component === undefined ? undefined : classByComponent.get(component.trim().toLowerCase())
  const classes = new Map<string, { defects: number; joints: number }>()
  for (const { component, joints } of holes) {
    const name = classOfComponent(component)
    if (name === undefined) continue
    const known = classes.get(name) ?? { defects: 0, joints: 0 }
    classes.set(name, { ...known, joints: known.joints + joints * assembliesSeen })
  }
  for (const { joint } of defectiveJoints) {
    const known = classes.get(classOfComponent(componentOfJoint(joint, names)) ?? '')
    if (known) known.defects += 1
  }
  return [...classes]
    .filter(([, { joints }]) => joints > 0)
    .map(([name, { defects, joints }]) => ({ name, joints, defects: Math.min(defects, joints) }))
}
