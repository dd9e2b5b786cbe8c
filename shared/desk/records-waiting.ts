import { defectRecord, type DefectiveJoint } from '@/shared/inspection/defect-record'
import { keyOfJoint } from '@/shared/inspection/rework-summary'
import type { Department } from '@/shared/plan/department'
import type { Facts } from '@/shared/rules/facts'
import { electricalTests, reworkRecords } from '@/shared/rules/assembly-record-sources'
import { groupedBy } from '@/shared/grouped-by'
import { checksDue } from './checks-due'
import type { DeskEntry } from './desk-entry'
import { counted } from '@/shared/quantity/counted'

/** Lots without a decision, checks that are due, joints to rework: what records ask for today. */
export const recordsWaiting = (department: Department, facts: Facts): DeskEntry[] => [
  ...(department === 'quality' ? lotsWaiting(facts) : []),
  ...(department === 'production' ? [...checksToday(facts), ...jointsToRework(facts)] : []),
]

const lotsWaiting = ({ records }: Facts): DeskEntry[] =>
  records.lots
    .filter(({ disposition }) => !disposition)
    .map(({ code, part, tests }) => ({
      bearing: 'own work',
      verb: tests.length === 0 ? 'test' : 'dispose',
      message: `Lot ${code}, ${part}`,
      department: 'quality',
      dueOn: null,
      place: { kind: 'lot', lot: code },
    }))

const checksToday = (facts: Facts): DeskEntry[] =>
  checksDue(facts)
    .filter(({ dueOn }) => dueOn <= facts.today)
    .map(({ log, subject, dueOn }) => ({
      bearing: 'own work',
      verb: 'check',
      message: subject,
      department: 'production',
      dueOn,
      place: { kind: 'log', log },
    }))

/** Defective joints that no rework is recorded of, an assembly a line. */
function jointsToRework({ records }: Facts): DeskEntry[] {
  const mended = new Set(
    reworkRecords.from(records).map(({ assembly, joint }) => keyOfJoint(assembly, joint)),
  )
  const { defectiveJoints } = defectRecord(records.inspections, electricalTests.from(records), undefined)
  const waiting = defectiveJoints.filter(({ assembly, joint }) => !mended.has(keyOfJoint(assembly, joint)))
  return [...groupedBy(waiting, ({ assembly }) => assembly)].map(([assembly, joints]) => ({
    bearing: 'own work',
    verb: 'rework',
    message: `Assembly ${assembly}: ${counted(joints.length, 'joint', 'joints')}`,
    several: joints.map(inWords),
    department: 'production',
    dueOn: null,
    place: { kind: 'assembly', serial: assembly },
  }))
}

const inWords = ({ joint, kinds }: DefectiveJoint): string => [joint, ...kinds].join(' ')
