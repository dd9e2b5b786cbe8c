import { flagParameter, numberParameter } from '@/shared/plan/parameter'

/** Further proof that a programme may ask for; left open, none is. */

export const agreementStudyAsked = flagParameter({
  key: 'agreement-study-asked',
  label: 'Inspectors’ agreement is studied',
  help: 'Inspectors call the same joints blind. Left open, no study is asked.',
  owner: 'quality',
})

export const microsectionsAsked = numberParameter({
  key: 'microsections-asked',
  label: 'Joints cut open',
  help: 'How many joints are cut and polished; the assembly is spent. Left open, none.',
  owner: 'quality',
  unit: 'joints',
  min: 0,
  max: 10_000,
  whole: true,
})

export const lifeTestAsked = flagParameter({
  key: 'life-test-asked',
  label: 'Reliability is demonstrated by a life test',
  help: 'Specimens are cycled until the survival target is shown. Left open, the prediction and the inspection stand alone.',
  owner: 'quality',
})

export const lifeCyclesNeeded = numberParameter({
  key: 'life-cycles-needed',
  label: 'Service cycles to be shown',
  help: 'Cycles of a whole service life, in the sense of the life test. Left open, they follow from the cycles a year and the service life.',
  owner: 'design',
  unit: 'cycles',
  min: 1,
  max: 1e8,
})

export const fieldRecordAsked = flagParameter({
  key: 'field-record-asked',
  label: 'Service must show the failure rate',
  help: 'Yes, or left open: once boards serve, the gate waits until their hours show the rate. No, by decision: service is watched, and stands in the way only where it contradicts the rate.',
  owner: 'quality',
})

export const workingHourCost = numberParameter({
  key: 'working-hour-cost',
  label: 'Cost of a working hour',
  help: 'For the cost of rework. Left open, hours are shown without a price.',
  owner: 'production',
  unit: 'currency',
  min: 0,
  max: 100_000,
})
