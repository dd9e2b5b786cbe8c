import { calibrationRecord } from './kinds/calibration'
import { chartReset } from './kinds/chart-reset'
import { defectSignalAnswer } from './kinds/defect-signal-answer'
import { electricalTest } from './kinds/electrical-test'
import { fieldExposure } from './kinds/field-exposure'
import { fieldReturn } from './kinds/field-return'
import { fluxRemoval } from './kinds/flux-removal'
import { gaugeReading } from './kinds/gauge-reading'
import { inspectorCall } from './kinds/inspector-call'
import { insulationResistance } from './kinds/insulation-resistance'
import { ionicCleanliness } from './kinds/ionic-cleanliness'
import { leadForming } from './kinds/lead-forming'
import { lifeTest } from './kinds/life-test'
import { microsection } from './kinds/microsection'
import { moistureExposure } from './kinds/moisture-exposure'
import { qualityCost } from './kinds/quality-cost'
import { reInspection } from './kinds/re-inspection'
import { rework } from './kinds/rework'
import { signalAnswer } from './kinds/signal-answer'
import { solderingRun } from './kinds/soldering-run'
import { supplierAction } from './kinds/supplier-action'
import { training } from './kinds/training'
import type { RecordRow } from './record-kind'

/** Every kind of record, by key. A new kind is added here; the compiler asks where it is worked out. */
export const RECORD_KINDS = {
  calibration: calibrationRecord,
  'chart-reset': chartReset,
  'defect-signal-answer': defectSignalAnswer,
  'electrical-test': electricalTest,
  'field-exposure': fieldExposure,
  'field-return': fieldReturn,
  'flux-removal': fluxRemoval,
  'gauge-reading': gaugeReading,
  'inspector-call': inspectorCall,
  'insulation-resistance': insulationResistance,
  'ionic-cleanliness': ionicCleanliness,
  'lead-forming': leadForming,
  'life-test': lifeTest,
  microsection,
  'moisture-exposure': moistureExposure,
  'quality-cost': qualityCost,
  're-inspection': reInspection,
  rework,
  'signal-answer': signalAnswer,
  'soldering-run': solderingRun,
  'supplier-action': supplierAction,
  training,
} as const
export type RecordKindKey = keyof typeof RECORD_KINDS
export type RecordOf<K extends RecordKindKey> = RecordRow<(typeof RECORD_KINDS)[K]>
