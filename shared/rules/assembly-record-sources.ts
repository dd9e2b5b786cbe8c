import { recordsOf } from '@/shared/rules/record-source'

export const electricalTests = recordsOf('electrical-test', 'electrical tests')
export const solderingRuns = recordsOf('soldering-run', 'soldering runs')
export const reworkRecords = recordsOf('rework', 'rework')
export const reInspections = recordsOf('re-inspection', 're-inspections')
export const cleanlinessTests = recordsOf('ionic-cleanliness', 'ionic cleanliness tests')
export const insulationReadings = recordsOf('insulation-resistance', 'insulation resistance readings')
export const inspectorCalls = recordsOf('inspector-call', 'inspectors’ calls')
export const microsections = recordsOf('microsection', 'microsections')
export const lifeTests = recordsOf('life-test', 'life tests')
export const fieldReturns = recordsOf('field-return', 'field returns')
export const fieldExposures = recordsOf('field-exposure', 'service exposure')
export const defectSignalAnswers = recordsOf(
  'defect-signal-answer',
  'answers to signals of charts of defects',
)
