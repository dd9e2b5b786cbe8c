import { reworkWaitingIn, type JointInRework } from '@/shared/inspection/rework-waiting'
import type { Department } from '@/shared/plan/department'
import type { Facts } from '@/shared/rules/facts'
import { groupedBy } from '@/shared/grouped-by'
import { checksDue } from './checks-due'
import type { DeskEntry } from './desk-entry'
import { counted } from '@/shared/quantity/counted'

/** Lots without a decision, checks that are due, joints to rework: what records ask for today. */
export const recordsWaiting = (department: Department, facts: Facts): DeskEntry[] => [
  ...(department === 'quality' ? [...lotsWaiting(facts), ...jointsToInspect(facts)] : []),
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

/** Defective joints that wait for the iron, an assembly a line. */
const jointsToRework = ({ records }: Facts): DeskEntry[] =>
  assemblyByAssembly(reworkWaitingIn(records).forRework, {
    verb: 'rework',
    department: 'production',
    placeOf: (serial) => ({ kind: 'assembly', serial }),
  })

/** Reworked joints that nobody has looked at since, an assembly a line. */
const jointsToInspect = ({ records }: Facts): DeskEntry[] =>
  assemblyByAssembly(reworkWaitingIn(records).forInspection, {
    verb: 'inspect again',
    department: 'quality',
    placeOf: (serial) => ({ kind: 'assembly', serial }),
  })

const assemblyByAssembly = (
  joints: readonly JointInRework[],
  {
    placeOf,
    ...line
  }: Pick<DeskEntry, 'verb' | 'department'> & { placeOf: (serial: string) => DeskEntry['place'] },
): DeskEntry[] =>
  [...groupedBy(joints, ({ assembly }) => assembly)].map(([assembly, own]) => ({
    bearing: 'own work',
    ...line,
    message: `Assembly ${assembly}: ${counted(own.length, 'joint', 'joints')}`,
    several: own.map(inWords),
    dueOn: null,
    place: placeOf(assembly),
  }))

const inWords = ({ joint, kinds }: JointInRework): string => [joint, ...kinds].join(' ')
