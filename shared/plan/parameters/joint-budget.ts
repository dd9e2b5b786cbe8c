import { choiceParameter, numberParameter } from '@/shared/plan/parameter'

export const surfaceMountJoints = numberParameter({
  key: 'surface-mount-joints',
  label: 'Surface-mount joints',
  help: 'Joints without a hole on the same board; 0 where there are none.',
  owner: 'design',
  unit: 'joints',
  min: 0,
  max: 100_000,
  whole: true,
})

export const survivalTarget = numberParameter({
  key: 'survival-target',
  label: 'Boards that outlive service without a joint failure',
  help: 'The share of boards whose joints must all hold for the service life.',
  owner: 'design',
  unit: '%',
  min: 50,
  max: 99.9999,
})

export const defectFreeBoards = numberParameter({
  key: 'defect-free-boards',
  label: 'Boards soldered without a defect',
  help: 'The share of boards that shall leave soldering with no defective joint; sets the defects per million that inspection is judged against.',
  owner: 'quality',
  unit: '%',
  min: 50,
  max: 99.9999,
})

export const failureRateEdition = choiceParameter({
  key: 'failure-rate-edition',
  label: 'Failure rates from',
  help: 'Two issues of the handbook differ by more than two to one. Left open, the higher rates apply.',
  owner: 'quality',
  options: [
    { value: 'notice-2', label: 'MIL-HDBK-217F Notice 2 (1995)' },
    { value: 'base', label: 'MIL-HDBK-217F (1991)' },
  ],
})

export const boardQuality = choiceParameter({
  key: 'board-quality',
  label: 'Quality of the bare board',
  help: 'The quality factor of the failure-rate handbook for the board as bought.',
  owner: 'quality',
  options: [
    { value: 'qualified', label: 'Military specification or IPC level 3' },
    { value: 'lower', label: 'Lower' },
  ],
})
