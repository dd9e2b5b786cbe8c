import type { GoverningRequirement } from '@/shared/plan/requirement'
import {
  normalityMin,
  sampleConfidenceMin,
  zeroAcceptanceConfidenceMin,
  zeroAcceptanceQualityMax,
} from '@/shared/plan/limits/evaluation-sampling'
import { variablesGuard } from '@/shared/plan/limits/evaluation-guards'
import {
  floatTemperatureMin,
  floatTimeMin,
  testTemperatureToleranceMax,
  wettingTimeMax,
} from '@/shared/plan/limits/evaluation-solderability'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import {
  acceptableQualityLevel,
  inspectionLevel,
  reducedInspectionWanted,
  samplingScheme,
  switchingEdition,
} from '@/shared/plan/parameters/evaluation-sampling'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { instruments, lots, recordsOf } from '@/shared/rules/record-source'
import { optional, type Inputs } from '@/shared/rules/rule'
import { ISO_2859_1, MIL_STD_105D, MIL_STD_105E } from '@/shared/statistics/sampling/switching-rules'
import type { SamplingContext } from './lot-sampling'
import type { TestDemands } from './test-status'

/** What decides whether a test's result counts. */
export const statusReads = {
  lots,
  instruments,
  calibrations: recordsOf('calibration', 'calibrations'),
  conditions: testConditions,
  temperatureTolerance: testTemperatureToleranceMax,
  wettingTime: wettingTimeMax,
  floatTemperature: floatTemperatureMin,
  floatTime: floatTimeMin,
} as const

/** What decides how lots are sampled, beside that. */
export const samplingReads = {
  ...statusReads,
  needed: lotsNeeded,
  level: inspectionLevel,
  aql: acceptableQualityLevel,
  scheme: optional(samplingScheme),
  reducedWanted: optional(reducedInspectionWanted),
  edition: optional(switchingEdition),
  supplierActions: recordsOf('supplier-action', 'supplier actions'),
  confidence: sampleConfidenceMin,
  zeroQuality: zeroAcceptanceQualityMax,
  zeroConfidence: zeroAcceptanceConfidenceMin,
  variablesGuard,
  normality: normalityMin,
} as const

export type StatusInputs = Inputs<typeof statusReads>
export type SamplingInputs = Inputs<typeof samplingReads>

const EDITIONS = {
  'MIL-STD-105E': MIL_STD_105E,
  'ISO 2859-1': ISO_2859_1,
  'MIL-STD-105D': MIL_STD_105D,
} as const

export const demandsFrom = (inputs: StatusInputs): TestDemands => ({
  specified: inputs.conditions,
  temperatureToleranceK: inputs.temperatureTolerance.value,
  wettingTime: inputs.wettingTime,
  float: { minC: inputs.floatTemperature.value, minS: inputs.floatTime.value },
  instruments: { instruments: inputs.instruments, calibrations: inputs.calibrations },
})

export const contextFrom = (inputs: SamplingInputs): SamplingContext => ({
  settings: {
    scheme: inputs.scheme ?? 'single',
    level: inputs.level,
    limit: inputs.aql,
    reducedWanted: inputs.reducedWanted ?? false,
    zeroAcceptance: {
      fraction: fractionOf(inputs.zeroQuality),
      confidence: fractionOf(inputs.zeroConfidence),
    },
  },
  needed: inputs.needed,
  demands: demandsFrom(inputs),
  switching: EDITIONS[inputs.edition ?? 'MIL-STD-105E'],
  supplierActions: inputs.supplierActions,
  normalityMin: fractionOf(inputs.normality),
})

/** A limit in percent as a fraction strictly between 0 and 1, which the distributions ask for. */
export const fractionOf = ({ value }: Pick<GoverningRequirement, 'value'>): number =>
  Math.min(1 - 1e-9, Math.max(1e-9, value / 100))
