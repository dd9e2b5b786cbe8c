import type { ValueOf } from '@/shared/plan/parameter'
import { fractionOf } from '@/shared/plan/limit-fraction'
import {
  normalityMin,
  sampleConfidenceMin,
  zeroAcceptanceConfidenceMin,
  zeroAcceptanceQualityMax,
} from '@/shared/plan/limits/evaluation-sampling'
import { variablesGuard } from '@/shared/plan/limits/evaluation-guards'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import {
  acceptableQualityLevel,
  inspectionLevel,
  reducedInspectionWanted,
  samplingScheme,
  switchingEdition,
} from '@/shared/plan/parameters/evaluation-sampling'
import { kindAndPart } from '@/shared/records/lot-identity'
import { countingReads } from '@/shared/lot-tests/counted-tests'
import { deliveries, recordsOf } from '@/shared/rules/record-source'
import { optional, type Inputs } from '@/shared/rules/rule'
import {
  ISO_2859_1,
  MIL_STD_105D,
  MIL_STD_105E,
  type SwitchingRules,
} from '@/shared/statistics/sampling/switching-rules'
import type { SamplingSettings } from './sampling-plan'

/** What decides how lots are sampled, beside whether their tests count. */
export const samplingReads = {
  ...countingReads,
  deliveries,
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
export type SamplingInputs = Inputs<typeof samplingReads>

/** How the programme samples, where a part states nothing else. */
export const settingsOf = (inputs: SamplingInputs): SamplingSettings => ({
  scheme: inputs.scheme ?? 'single',
  level: inputs.level,
  limit: inputs.aql,
  reducedWanted: inputs.reducedWanted ?? false,
  zeroAcceptance: {
    fraction: fractionOf(inputs.zeroQuality),
    confidence: fractionOf(inputs.zeroConfidence),
  },
})

/** A part to be evaluated by one test, with what is stated of its sampling. */
type NeededPart = ValueOf<typeof lotsNeeded>[number]

/** How lots of one part are sampled for one test: as the programme samples, save for what the part's own row states. */
export function settingsFor(
  part: Pick<NeededPart, 'kind' | 'part'>,
  method: string,
  inputs: SamplingInputs,
): SamplingSettings {
  const programme = settingsOf(inputs)
  const own = inputs.needed.find((row) => row.method === method && kindAndPart(row) === kindAndPart(part))
  return {
    ...programme,
    level: own?.level ?? programme.level,
    limit: own?.aql ?? programme.limit,
    ...(own?.sampleSize !== undefined && { statedSize: own.sampleSize }),
  }
}

const EDITIONS = {
  'MIL-STD-105E': MIL_STD_105E,
  'ISO 2859-1': ISO_2859_1,
  'MIL-STD-105D': MIL_STD_105D,
} as const

/** The rules by which inspection turns stricter and easier. */
export const switchingRules = ({ edition }: Pick<SamplingInputs, 'edition'>): SwitchingRules =>
  EDITIONS[edition ?? 'MIL-STD-105E']

/** The edition chosen rules the switching; what is sampled is always read from the tables of MIL-STD-105E. */
export const tablesNote = ({ edition }: Pick<SamplingInputs, 'edition'>): readonly string[] =>
  edition === 'ISO 2859-1'
    ? [
        'ISO 2859-1 rules the switching alone: sample sizes, acceptance and rejection numbers are those of the MIL-STD-105E tables, from which ISO 2859-1:1999 departs in places (its reduced plans have no gap between the two numbers; from memory).',
      ]
    : []
