import { choiceColumn, dateColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** Skills that a person is trained and examined in. */
export const SKILLS = [
  { value: 'hand-soldering', label: 'Hand soldering' },
  { value: 'machine-soldering', label: 'Wave, dip and selective soldering' },
  { value: 'reflow-soldering', label: 'Reflow soldering' },
  { value: 'rework', label: 'Rework' },
  { value: 'component-preparation', label: 'Component preparation and lead forming' },
  { value: 'cleaning', label: 'Cleaning' },
  { value: 'solderability-testing', label: 'Solderability testing' },
  { value: 'inspection', label: 'Visual inspection' },
] as const
export type Skill = (typeof SKILLS)[number]['value']

/** A person's examination in one skill. */
export const training = recordKind({
  key: 'training',
  label: 'training record',
  plural: 'Training',
  help: 'One row per person, skill and examination passed, with the day it runs out. An older row is kept: who was current then is asked later.',
  stage: 'control',
  departments: ['production', 'quality'],
  assemblies: null,
  teaches: false,
  columns: {
    worker: textColumn({ label: 'Worker', maxLength: 80 }),
    skill: choiceColumn({ label: 'Skill', options: SKILLS }),
    passedOn: dateColumn({ label: 'Passed on' }),
    expiresOn: dateColumn({ label: 'Valid to', help: 'The last day on which it holds.', mayLieAhead: true }),
    certificate: textColumn({ label: 'Certificate or record', maxLength: 80 }),
  },
  cautions: [],
  keptAt: 'people',
})
