import { trainingNoticeMin, trainingValidMax } from '@/shared/plan/limits/control-people'
import { isSolderabilityMethod } from '@/shared/methods/test-methods'
import { undetermined, type Judged } from '@/shared/rules/finding'
import { judgePeople, peopleLimit } from '@/shared/rules/people-current'
import { lots, recordsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'

export const trainedPeopleRule = rule({
  id: 'trained-people',
  title: 'People trained, certificates current on the day',
  why: 'A joint is as good as the hand that made it. What counts is who was current on the day of the work, not today.',
  formula: 'on each day of work the person’s training was passed and had not run out',
  stage: 'control',
  version: 1,
  reads: {
    validMax: trainingValidMax,
    notice: trainingNoticeMin,
    training: recordsOf('training', 'training records'),
    runs: recordsOf('soldering-run', 'soldering runs'),
    forming: recordsOf('lead-forming', 'lead forming checks'),
    lots,
  },
  judge({ validMax, notice, training, runs, forming, lots: tested }): Judged {
    const tasks = [
      ...runs.map(({ worker, skill, doneOn }) => ({ worker, skill, on: doneOn })),
      ...forming.map(({ worker, checkedOn }) => ({
        worker,
        skill: 'component-preparation' as const,
        on: checkedOn,
      })),
    ]
    if (tasks.length === 0)
      return undetermined(
        'No work is recorded yet: soldering runs and lead forming name who did them.',
        ['soldering runs with their workers'],
        peopleLimit(validMax),
      )
    const testers = tested.flatMap(({ tests }) =>
      tests
        .filter(({ method }) => isSolderabilityMethod(method))
        .map(({ testedBy, testedOn }) => ({
          worker: testedBy,
          skill: 'solderability-testing' as const,
          on: testedOn,
        })),
    )
    return judgePeople([...tasks, ...testers], training, { validMax, notice })
  },
})
