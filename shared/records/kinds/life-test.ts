import { dateColumn, flagColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** One specimen of a life test: how long it ran and whether it failed. */
export const lifeTest = recordKind({
  key: 'life-test',
  label: 'life test specimen',
  plural: 'Life tests',
  help: 'One row per specimen: joints on it, how long it ran, whether a joint failed then. Still running counts as not failed.',
  stage: 'assessment',
  departments: ['quality'],
  assemblies: null,
  teaches: false,
  columns: {
    endedOn: dateColumn({ label: 'Read on' }),
    test: textColumn({
      label: 'Test',
      maxLength: 60,
      help: 'Specimens of one test, under the same stress, are judged together.',
    }),
    specimen: textColumn({ label: 'Specimen', maxLength: 40 }),
    joints: numberColumn({ label: 'Joints on it', unit: 'joints', min: 1, max: 100_000, whole: true }),
    cycles: numberColumn({ label: 'Ran for', unit: 'cycles', min: 0, max: 1e9 }),
    failed: flagColumn({ label: 'A joint failed then' }),
    acceleration: numberColumn({
      label: 'Service cycles that one test cycle stands for',
      unit: '×',
      min: 0.001,
      max: 1e6,
      help: 'From a named model; 1 when the test is the service itself.',
    }),
    model: optionalColumn(textColumn({ label: 'Model behind the acceleration', maxLength: 120 })),
  },
  cautions: ['Thermal shock chambers burn and freeze: gloves and interlocks.'],
})
