import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { recordKind } from '@/shared/records/record-kind'

/** Assemblies tested electrically, and the joints that the test found. */
export const electricalTest = recordKind({
  key: 'electrical-test',
  label: 'electrical test',
  plural: 'Electrical tests',
  help: 'One row per batch, or a single assembly where a joint failed: how many were tested, how many passed at first, and the joint at fault.',
  stage: 'assessment',
  departments: ['production', 'quality'],
  assemblies: { column: 'assembly', one: false },
  teaches: false,
  columns: {
    testedOn: dateColumn({ label: 'Tested on' }),
    assembly: textColumn({ label: 'Assembly or batch', maxLength: 80 }),
    tested: numberColumn({ label: 'Tested', unit: 'boards', min: 1, max: 1_000_000, whole: true }),
    passedFirst: numberColumn({
      label: 'Passed at the first test',
      unit: 'boards',
      min: 0,
      max: 1_000_000,
      whole: true,
    }),
    jointFailures: numberColumn({
      label: 'Joints at fault',
      unit: 'joints',
      min: 0,
      max: 1_000_000,
      whole: true,
      help: 'Failures traced to a solder joint; they join the record of defects.',
    }),
    defect: optionalColumn(
      choiceColumn({
        label: 'Kind of defect',
        options: DEFECT_KINDS.map((kind) => ({ value: kind, label: kind })),
      }),
    ),
    joint: optionalColumn(textColumn({ label: 'Joint', maxLength: 40 })),
    cause: optionalColumn(textColumn({ label: 'Cause of the other failures', maxLength: 200 })),
  },
  cautions: [
    'Mains or high voltage on test: only by people licensed or instructed for it, behind the guards that local codes ask for.',
  ],
})
