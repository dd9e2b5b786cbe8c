import type { DefectKind, Inspection } from '@/shared/records/inspection'
import type { RecordOf } from '@/shared/records/record-kinds'

export type ElectricalTest = RecordOf<'electrical-test'>

/** One defective joint, however it was found and however many faults it shows. */
export interface DefectiveJoint {
  readonly assembly: string
  readonly joint: string
  readonly kinds: readonly DefectKind[]
  readonly foundBy: 'inspection' | 'electrical test'
}

/** All that is known of defects: every joint counted once, looked at or tested. */
export interface DefectRecord {
  readonly assembliesSeen: number
  /**
   * Different joints inspected. Which joints a partial look saw is not recorded, so
   * that several looks at one assembly are taken to have seen those of the largest.
   */
  readonly jointsSeen: number
  readonly defectiveJoints: readonly DefectiveJoint[]
  /** Defective joints found only electrically that no record names; they count all the same. */
  readonly unnamed: number
  /** Distinct defective joints, the unnamed among them. */
  readonly defective: number
}

const nameOf = (text: string): string => text.trim().toLowerCase()

/**
 * The record of defects from inspections and electrical tests together. A joint
 * found by both counts once. No look sees more joints than `jointsOnBoard`.
 */
export function defectRecord(
  inspections: readonly Inspection[],
  tests: readonly ElectricalTest[],
  jointsOnBoard: number | undefined,
): DefectRecord {
  const seenOn = new Map<string, number>()
  const joints = new Map<
    string,
    { assembly: string; joint: string; kinds: Set<DefectKind>; foundBy: DefectiveJoint['foundBy'] }
  >()
  const add = (
    assembly: string,
    joint: string,
    kind: DefectKind | undefined,
    foundBy: DefectiveJoint['foundBy'],
  ): void => {
    const key = `${nameOf(assembly)}\n${nameOf(joint)}`
    const known = joints.get(key)
    if (known) {
      if (kind) known.kinds.add(kind)
    } else joints.set(key, { assembly, joint, kinds: new Set(kind ? [kind] : []), foundBy })
  }
  for (const { assembly, jointsSeen, defects } of inspections) {
    const key = nameOf(assembly)
    seenOn.set(key, Math.max(seenOn.get(key) ?? 0, Math.min(jointsSeen, jointsOnBoard ?? Infinity)))
    for (const { joint, kind } of defects) add(assembly, joint, kind, 'inspection')
  }
  let unnamed = 0
  for (const { assembly, joint, jointFailures, defect } of tests) {
    if (jointFailures === 0) continue
    const named: string | undefined = joint
    if (named !== undefined && nameOf(named) !== '') {
      add(assembly, named, defect, 'electrical test')
      unnamed += jointFailures - 1
    } else unnamed += jointFailures
  }
  const defectiveJoints = [...joints.values()].map(({ kinds, ...rest }) => ({ ...rest, kinds: [...kinds] }))
  return {
    assembliesSeen: seenOn.size,
    jointsSeen: [...seenOn.values()].reduce((sum, seen) => sum + seen, 0),
    defectiveJoints,
    unnamed,
    defective: defectiveJoints.length + unnamed,
  }
}
