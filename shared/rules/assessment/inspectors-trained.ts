import { trainingNoticeMin, trainingValidMax } from '@/shared/plan/limits/control-people'
import { undetermined, type Judged } from '@/shared/rules/finding'
import { judgePeople, peopleLimit } from '@/shared/rules/people-current'
import { inspections, recordsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import { reworkRecords } from '@/shared/rules/assembly-record-sources'

export const inspectorsTrained = rule({
  id: 'inspectors-trained',
  title: 'Inspectors and reworkers trained, certificates current on the day',
  why: 'A count of defects is worth what the eye behind it knows, and a repaired joint what the hand knows. Both must have been current then.',
  formula: 'on each day of inspection the person’s training was passed and had not run out',
  stage: 'assessment',
  version: 1,
  reads: {
    validMax: trainingValidMax,
    notice: trainingNoticeMin,
    training: recordsOf('training', 'training records'),
    inspections,
    rework: reworkRecords,
  },
  judge({ validMax, notice, training, inspections: looks, rework }): Judged {
    if (looks.length === 0)
      return undetermined(
        'No inspection is recorded yet: record each assembly inspected, with its inspector.',
        ['inspections of assemblies'],
        peopleLimit(validMax),
      )
    return judgePeople(
      [
        ...looks.map(({ inspector, inspectedOn }) => ({
          worker: inspector,
          skill: 'inspection' as const,
          on: inspectedOn,
        })),
        ...rework.map(({ worker, doneOn }) => ({ worker, skill: 'rework' as const, on: doneOn })),
      ],
      training,
      { validMax, notice },
    )
  },
})
