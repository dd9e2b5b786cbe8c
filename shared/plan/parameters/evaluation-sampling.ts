import { choiceParameter, flagParameter } from '@/shared/plan/parameter'

export const INSPECTION_LEVEL_OPTIONS = [
  { value: 'S-1', label: 'Special S-1' },
  { value: 'S-2', label: 'Special S-2' },
  { value: 'S-3', label: 'Special S-3' },
  { value: 'S-4', label: 'Special S-4' },
  { value: 'I', label: 'General I' },
  { value: 'II', label: 'General II' },
  { value: 'III', label: 'General III' },
] as const

export const QUALITY_LEVEL_OPTIONS = [
  { value: '0.10', label: '0.10 %' },
  { value: '0.15', label: '0.15 %' },
  { value: '0.25', label: '0.25 %' },
  { value: '0.40', label: '0.40 %' },
  { value: '0.65', label: '0.65 %' },
  { value: '1.0', label: '1.0 %' },
  { value: '1.5', label: '1.5 %' },
  { value: '2.5', label: '2.5 %' },
  { value: '4.0', label: '4.0 %' },
  { value: '6.5', label: '6.5 %' },
  { value: '10', label: '10 %' },
] as const

export const inspectionLevel = choiceParameter({
  key: 'sampling-inspection-level',
  label: 'Inspection level',
  help: 'How large a sample is for a lot of a given size. The special levels S-1 to S-4 keep destructive samples small, and prove less.',
  owner: 'quality',
  options: INSPECTION_LEVEL_OPTIONS,
})

export const acceptableQualityLevel = choiceParameter({
  key: 'sampling-aql',
  label: 'Acceptable quality level',
  help: 'The share of nonconforming pieces that the plan should nearly always accept. It is not what an accepted lot is shown to have.',
  owner: 'quality',
  options: QUALITY_LEVEL_OPTIONS,
})

export const samplingScheme = choiceParameter({
  key: 'sampling-scheme',
  label: 'Kind of sampling plan',
  help: 'Single and double plans come from the tables by lot size and acceptable quality level; a zero-acceptance plan from the quality that must not pass and the confidence.',
  owner: 'quality',
  options: [
    { value: 'single', label: 'Single sample' },
    { value: 'double', label: 'Double sample' },
    { value: 'zero-acceptance', label: 'Zero acceptance' },
    { value: 'variables', label: 'Variables (measured values)' },
  ],
})

export const reducedInspectionWanted = flagParameter({
  key: 'sampling-reduced-wanted',
  label: 'Reduced inspection allowed',
  help: 'Yes only where production is at a steady rate and quality wants the smaller samples; otherwise a good history stays at normal inspection.',
  owner: 'quality',
})

export const switchingEdition = choiceParameter({
  key: 'sampling-switching-edition',
  label: 'Edition of the switching rules',
  help: 'When a series of lots earns reduced inspection and when it is discontinued. MIL-STD-105E unless chosen.',
  owner: 'quality',
  options: [
    { value: 'MIL-STD-105E', label: 'MIL-STD-105E: ten lots accepted; five rejected on tightened' },
    { value: 'ISO 2859-1', label: 'ISO 2859-1: switching score of 30; five rejected on tightened' },
    { value: 'MIL-STD-105D', label: 'MIL-STD-105D: ten lots accepted; ten lots on tightened' },
  ],
})
