import type { RecordOf } from '@/shared/records/record-kinds'

type Rework = RecordOf<'rework'>

/** One joint with all its visits. */
export interface ReworkedJoint {
  readonly assembly: string
  readonly joint: string
  readonly heats: number
  readonly visits: number
}

/** Rework added up: joints, heats, hours and money. */
export interface ReworkSummary {
  readonly joints: readonly ReworkedJoint[]
  readonly visits: number
  readonly minutes: number
  readonly material: number
  /** Hours at the given price and the material; material alone when no price is given. */
  readonly cost: number
}

/** One joint of one assembly, however its name was typed. */
export const keyOfJoint = (assembly: string, joint: string): string =>
  `${assembly.trim().toLowerCase()}\n${joint.trim().toLowerCase()}`

/** Adds up recorded rework joint by joint; the hour costs nothing unless a price is given. */
export function reworkSummary(rows: readonly Rework[], hourCost = 0): ReworkSummary {
  const joints = new Map<string, ReworkedJoint>()
  let minutes = 0
  let material = 0
  for (const row of rows) {
    const key = keyOfJoint(row.assembly, row.joint)
    const { assembly, joint, heats, visits } = joints.get(key) ?? { ...row, heats: 0, visits: 0 }
    joints.set(key, { assembly, joint, heats: heats + row.heats, visits: visits + 1 })
    minutes += row.minutes
    material += row.material ?? 0
  }
  return {
    joints: [...joints.values()],
    visits: rows.length,
    minutes,
    material,
    cost: (minutes / 60) * hourCost + material,
  }
}
