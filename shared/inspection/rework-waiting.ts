import { groupedBy } from '@/shared/grouped-by'
import type { DefectKind, Inspection } from '@/shared/records/inspection'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import type { RecordOf } from '@/shared/records/record-kinds'
import { electricalTests, reInspections, reworkRecords } from '@/shared/rules/assembly-record-sources'
import { keyOfJoint } from './rework-summary'

/** One defective joint on its way from the bench to the rework desk and back. */
export interface JointInRework {
  readonly assembly: string
  readonly joint: string
  readonly kinds: readonly DefectKind[]
  /** What the inspector wrote beside it. */
  readonly note: string
  readonly xMm: number | undefined
  readonly yMm: number | undefined
  readonly foundOn: string
  readonly foundBy: string
  /** The inspection that found it; undefined where only a re-inspection did. */
  readonly inspection: string | undefined
  readonly reworked: { readonly on: string; readonly by: string; readonly heats: number } | undefined
}

export interface ReworkWaiting {
  readonly forRework: readonly JointInRework[]
  readonly forInspection: readonly JointInRework[]
}

type Test = RecordOf<'electrical-test'>
type Rework = RecordOf<'rework'>
type Again = RecordOf<'re-inspection'>

/** One event of a joint's life. Of one day, ids (RFC 9562, version 7) tell which came first. */
type Event = { readonly on: string; readonly id: string } & (
  | { readonly did: 'found'; readonly joint: JointInRework }
  | { readonly did: 'reworked'; readonly row: Rework }
  | { readonly did: 'looked again'; readonly row: Again }
)

/**
 * The joints, found at inspection or by electrical test, that wait for rework, and those reworked that wait to be looked at again. A look at the whole assembly
 * does not say which joints it saw, so that only a re-inspection that names the joint ends the waiting.
 */
export function reworkWaiting(
  inspections: readonly Inspection[],
  rework: readonly Rework[],
  again: readonly Again[],
  tests: readonly Test[] = [],
): ReworkWaiting {
  const events = [
    ...tests.flatMap((test) =>
      jointFailing(test).map((joint): Event => ({ on: test.testedOn, id: test.id, did: 'found', joint })),
    ),
    ...inspections.flatMap((seen) =>
      jointsFound(seen).map((joint): Event => ({ on: seen.inspectedOn, id: seen.id, did: 'found', joint })),
    ),
    ...rework.map((row): Event => ({ on: row.doneOn, id: row.id, did: 'reworked', row })),
    ...again.map((row): Event => ({ on: row.inspectedOn, id: row.id, did: 'looked again', row })),
  ]
  const waiting = [...groupedBy(events, jointOf).values()].flatMap(
    (life) => waitingAfter(life.sort(byTime)) ?? [],
  )
  return {
    forRework: waiting.filter(({ reworked }) => !reworked),
    forInspection: waiting.filter(({ reworked }) => reworked),
  }
}

/** The same of all that is recorded of a programme. */
export const reworkWaitingIn = (records: ProgrammeRecords): ReworkWaiting =>
  reworkWaiting(
    records.inspections,
    reworkRecords.from(records),
    reInspections.from(records),
    electricalTests.from(records),
  )

const jointOf = (event: Event): string => {
  const { assembly, joint } = event.did === 'found' ? event.joint : event.row
  return keyOfJoint(assembly, joint)
}

const byTime = (a: Event, b: Event): number =>
  a.on !== b.on ? (a.on < b.on ? -1 : 1) : a.id < b.id ? -1 : a.id > b.id ? 1 : 0

/** The defects of one inspection, joint by joint. */
function jointsFound({ id, assembly, inspectedOn, inspector, defects }: Inspection): JointInRework[] {
  const joints = new Map<string, JointInRework>()
  for (const { joint, kind, xMm, yMm, note } of defects) {
    const key = keyOfJoint(assembly, joint)
    const known = joints.get(key)
    joints.set(key, {
      assembly,
      joint,
      kinds: [...new Set([...(known?.kinds ?? []), kind])],
      note: [known?.note, note].filter(Boolean).join('; '),
      xMm: known?.xMm ?? xMm,
      yMm: known?.yMm ?? yMm,
      foundOn: inspectedOn,
      foundBy: inspector,
      inspection: id,
      reworked: undefined,
    })
  }
  return [...joints.values()]
}

/** The joint that an electrical test names, where one failed. */
const jointFailing = ({ assembly, joint, jointFailures, defect, testedOn }: Test): JointInRework[] =>
  jointFailures === 0 || !joint?.trim()
    ? []
    : [
        {
          assembly,
          joint,
          kinds: defect ? [defect] : [],
          note: '',
          xMm: undefined,
          yMm: undefined,
          foundOn: testedOn,
          foundBy: 'electrical test',
          inspection: undefined,
          reworked: undefined,
        },
      ]

/** What a joint waits for after all that happened to it; undefined when it waits for nothing. */
function waitingAfter(events: readonly Event[]): JointInRework | undefined {
  let waits: JointInRework | undefined
  for (const event of events) {
    if (event.did === 'found') waits = event.joint
    else if (event.did === 'reworked') {
      const { doneOn, worker, heats } = event.row
      waits = waits && { ...waits, reworked: { on: doneOn, by: worker, heats } }
    } else waits = afterAnotherLook(waits, event.row)
  }
  return waits
}

function afterAnotherLook(before: JointInRework | undefined, row: Again): JointInRework | undefined {
  if (row.outcome === 'sound') return undefined
  return {
    assembly: row.assembly,
    joint: row.joint,
    kinds: [row.outcome],
    note: row.note ?? '',
    xMm: before?.xMm,
    yMm: before?.yMm,
    foundOn: row.inspectedOn,
    foundBy: row.inspector,
    inspection: before?.inspection,
    reworked: undefined,
  }
}
