import { directionEffect, type DirectionEffect } from '@/shared/statistics/comparison/direction-effect'
import { componentOfJoint } from './component-of-joint'
import type { DefectRecord } from './defect-record'

/** Joints of one component: how many were seen and how many were bad. */
export interface ComponentDefects {
  readonly component: string
  readonly defective: number
  readonly jointsSeen: number
  readonly perMillion: number
}

export interface DefectsByComponent {
  /** Worst rate first. */
  readonly components: readonly ComponentDefects[]
  /** Bad joints whose name begins with no component of the hole table. */
  readonly unplaced: number
  /** Whether some component is worse than chance; undefined without a defect or a second component. */
  readonly effect: DirectionEffect | undefined
}

/**
 * Defective joints by component, each component's joints taken as seen on every
 * assembly inspected, and a test whether they spread as chance would. It finds
 * that a component is worse, not why.
 */
export function defectsByComponent(
  record: DefectRecord,
  components: readonly { readonly component: string; readonly joints: number }[],
): DefectsByComponent {
  const joints = new Map<string, number>()
  for (const row of components) joints.set(row.component, (joints.get(row.component) ?? 0) + row.joints)
  const names = [...joints.keys()]
  const nonconforming = new Map<string, number>()
  let unplaced = record.unnamed
  for (const { joint } of record.defectiveJoints) {
    const name = componentOfJoint(joint, names)
    if (name === undefined) unplaced++
    else nonconforming.set(name, (nonconforming.get(name) ?? 0) + 1)
  }
  const rows = [...joints].map(([component, each]) => {
    const jointsSeen = each * record.assembliesSeen
    const defective = Math.min(nonconforming.get(component) ?? 0, jointsSeen)
    return {
      component,
      defective,
      jointsSeen,
      perMillion: jointsSeen === 0 ? 0 : (defective / jointsSeen) * 1e6,
    }
  })
  const seen = rows.filter(({ jointsSeen }) => jointsSeen > 0)
  return {
    components: [...rows].sort((a, b) => b.perMillion - a.perMillion || (a.component < b.component ? -1 : 1)),
    unplaced,
    effect:
      seen.length < 2
        ? undefined
        : directionEffect(
            seen.map(({ component, defective, jointsSeen }) => ({
              name: component,
              defects: defective,
              joints: jointsSeen,
            })),
          ),
  }
}
