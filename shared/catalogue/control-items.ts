import type { ItemDefinition } from './item'
import { partsHandlingItem } from './parts-handling'
import {
  bathAnalysisInterval,
  trendConfidenceMin,
  bathSumMax,
  bathTemperatureTolerance,
  bathTinTolerance,
  leadFreeBathMin,
  leadFreeBathLimits,
  leadFreeBathMax,
  tinLeadBathMin,
  tinLeadBathLimits,
  tinLeadBathMax,
} from '@/shared/plan/limits/control-bath'
import {
  aboveLiquidusUnlikeMin,
  aboveLiquidusUnlikeMax,
  bathAboveLiquidusMin,
  bathAboveLiquidusMax,
  peakAboveLiquidusMin,
  peakAboveLiquidusMax,
  preheatBelowSolidusMin,
  tipAboveLiquidusMax,
} from '@/shared/plan/limits/control-alloy'
import { capabilityConfidenceMin, capabilityMin } from '@/shared/plan/limits/control-charts'
import { densityControlSolidsMin } from '@/shared/plan/limits/control-flux'
import {
  groundCheckInterval,
  tipAccuracyMax,
  tipCeilingLeadFree,
  tipCeilingTinLead,
  tipCheckInterval,
  tipGroundMax,
  tipHoldMax,
  tipLeakageMax,
} from '@/shared/plan/limits/control-hand'
import {
  bathTemperatureInterval,
  fluxAcidNumberInterval,
  fluxDensityInterval,
  thermalProfileInterval,
  waveContactInterval,
  waveGeometryInterval,
  wavePreheatInterval,
} from '@/shared/plan/limits/control-intervals'
import {
  floorLifeGuard,
  leadBendGuard,
  processWindowGuard,
  storageClockGuard,
  tipCheckGuard,
} from '@/shared/plan/limits/guard-bands'
import { trainingNoticeMin, trainingValidMax } from '@/shared/plan/limits/control-people'
import {
  aboveLiquidusLeadFreeMin,
  aboveLiquidusLeadFreeMax,
  aboveLiquidusTinLeadMin,
  aboveLiquidusTinLeadMax,
  profileFallMax,
  profileRiseMax,
  profileSpreadMax,
  reflowPeakLeadFreeMin,
  reflowPeakLeadFreeMax,
  reflowPeakTinLeadMin,
  reflowPeakTinLeadMax,
  soakLeadFreeMin,
  soakLeadFreeMax,
  thermocouplesMin,
} from '@/shared/plan/limits/control-profile'
import { storeHumidityMax, storeReadingInterval } from '@/shared/plan/limits/control-storage'
import {
  conveyorAngleMin,
  conveyorAngleMax,
  immersionMin,
  immersionMax,
  preheatLeadFreeMin,
  preheatLeadFreeMax,
  preheatRiseMax,
  preheatTinLeadMin,
  preheatTinLeadMax,
  thermalStepChipMax,
  thermalStepMax,
  waveDwellMin,
  waveDwellMax,
  waveDwellTotalMax,
} from '@/shared/plan/limits/control-wave'
import {
  bathLimitEdition,
  bathMass,
  bathTemperatureTarget,
  newSolderCopper,
} from '@/shared/plan/parameters/control-bath'
import {
  capabilityAsked,
  chartPhases,
  chartRules,
  processCharts,
} from '@/shared/plan/parameters/control-charts'
import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxControlMethod,
  fluxDensityCoefficient,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxReferenceTemperature,
  fluxSolids,
  fluxTankVolume,
  thinnerDensity,
} from '@/shared/plan/parameters/control-flux'
import {
  leadBendEdition,
  leadsFormedHere,
  moistureSensitiveParts,
} from '@/shared/plan/parameters/control-handling'
import { tipAccuracyEdition, tipTemperatureTarget } from '@/shared/plan/parameters/control-hand'
import { chipCapacitorsInWave } from '@/shared/plan/parameters/control-wave'
import type { Limit } from '@/shared/plan/requirement'
import { bathAnalysisOnScheduleRule } from '@/shared/rules/control/bath-analysis-on-schedule'
import { bathCompositionRule } from '@/shared/rules/control/bath-composition'
import { bathTemperatureRule } from '@/shared/rules/control/bath-temperature'
import { bathTrendRule } from '@/shared/rules/control/bath-trend'
import { chartSignalsAnsweredRule } from '@/shared/rules/control/chart-signals-answered'
import { fluxAcidNumberRule } from '@/shared/rules/control/flux-acid-number'
import { fluxDensityRule } from '@/shared/rules/control/flux-density'
import { groundChecksOnScheduleRule } from '@/shared/rules/control/ground-checks-on-schedule'
import { leadFormingRule } from '@/shared/rules/control/lead-forming'
import { moistureFloorLifeRule } from '@/shared/rules/control/moisture-floor-life'
import { HOT_SOLDER_CAUTIONS } from '@/shared/plan/soldering-baths'
import { processCapabilityRule } from '@/shared/rules/control/process-capability'
import { storageClockRule } from '@/shared/rules/control/storage-clock'
import { storeClimateRule } from '@/shared/rules/control/store-climate'
import { thermalProfileRule } from '@/shared/rules/control/thermal-profile'
import { thermalStepRule } from '@/shared/rules/control/thermal-step'
import { tipChecksOnScheduleRule } from '@/shared/rules/control/tip-checks-on-schedule'
import { tipGroundRule } from '@/shared/rules/control/tip-ground'
import { tipTemperatureRule } from '@/shared/rules/control/tip-temperature'
import { trainedPeopleRule } from '@/shared/rules/control/trained-people'
import { waveDwellRule } from '@/shared/rules/control/wave-dwell'
import { waveGeometryRule } from '@/shared/rules/control/wave-geometry'
import { wavePreheatRule } from '@/shared/rules/control/wave-preheat'

const all = (limits: Readonly<Partial<Record<string, Limit>>>): Limit[] =>
  Object.values(limits).flatMap((limit) => limit ?? [])

/** The control: the process is held where the specification needs it. */
export const controlItems: readonly ItemDefinition[] = [
  {
    key: 'storage-and-handling',
    stage: 'control',
    title: 'Storage and handling',
    asks: 'Is every lot soldered while its evaluation still stands, kept and handled so that it stays solderable?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [leadsFormedHere, leadBendEdition, moistureSensitiveParts],
    limits: [storeHumidityMax, storeReadingInterval, storageClockGuard, floorLifeGuard, leadBendGuard],
    rules: [storageClockRule, storeClimateRule, moistureFloorLifeRule, leadFormingRule],
    evidence: [
      { kind: 'procedure', label: 'Routine for storage, handling and lead forming', required: false },
    ],
    cautions: [
      'Boards and leads are handled by their edges or in clean gloves; baking ovens are hot and follow the part maker’s schedule.',
    ],
  },
  partsHandlingItem,
  {
    key: 'people-trained',
    stage: 'control',
    title: 'People trained',
    asks: 'Was everyone who soldered, prepared, tested or inspected trained for it, with a certificate current on the day?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [],
    limits: [trainingValidMax, trainingNoticeMin],
    rules: [trainedPeopleRule],
    evidence: [],
    cautions: [],
  },
  {
    key: 'flux-control',
    stage: 'control',
    title: 'Flux',
    asks: 'How is the flux in use kept the flux that was chosen, and how much thinner does it need?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [
      fluxControlMethod,
      fluxSolids,
      fluxDensityTarget,
      fluxDensityTolerance,
      fluxReferenceTemperature,
      fluxDensityCoefficient,
      thinnerDensity,
      fluxTankVolume,
      fluxAcidNumberTarget,
      fluxAcidNumberTolerance,
    ],
    limits: [densityControlSolidsMin, fluxDensityInterval, fluxAcidNumberInterval],
    rules: [fluxDensityRule, fluxAcidNumberRule],
    evidence: [],
    cautions: [
      'Flux and thinner are highly flammable and their vapour travels: no flame or spark, good extraction, small amounts at the bench. Safety data sheets and local fire codes rule.',
    ],
  },
  {
    key: 'solder-bath',
    stage: 'control',
    title: 'Solder bath',
    asks: 'Is the bath at its temperature and clean enough, when will it need exchange, and was it analysed in time?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [bathTemperatureTarget, bathLimitEdition, bathMass, newSolderCopper],
    limits: [
      bathTemperatureTolerance,
      bathTemperatureInterval,
      tinLeadBathMin,
      tinLeadBathMax,
      leadFreeBathMin,
      leadFreeBathMax,
      bathAboveLiquidusMin,
      bathAboveLiquidusMax,
      ...all(tinLeadBathLimits),
      ...all(leadFreeBathLimits),
      bathSumMax,
      bathTinTolerance,
      bathAnalysisInterval,
      trendConfidenceMin,
    ],
    rules: [bathTemperatureRule, bathCompositionRule, bathTrendRule, bathAnalysisOnScheduleRule],
    evidence: [{ kind: 'analysis', label: 'Analysis reports of the bath', required: false }],
    cautions: HOT_SOLDER_CAUTIONS,
  },
  {
    key: 'wave',
    stage: 'control',
    title: 'Preheat and wave',
    asks: 'How warm does the board enter the wave, how long and how deep does it stay, and does the step harm its parts?',
    version: 1,
    owner: 'production',
    approvers: ['design', 'production', 'quality'],
    parameters: [chipCapacitorsInWave],
    limits: [
      preheatTinLeadMin,
      preheatTinLeadMax,
      preheatLeadFreeMin,
      preheatLeadFreeMax,
      preheatBelowSolidusMin,
      preheatRiseMax,
      thermalStepMax,
      thermalStepChipMax,
      waveDwellMin,
      waveDwellMax,
      waveDwellTotalMax,
      immersionMin,
      immersionMax,
      conveyorAngleMin,
      conveyorAngleMax,
      wavePreheatInterval,
      waveContactInterval,
      waveGeometryInterval,
    ],
    rules: [wavePreheatRule, thermalStepRule, waveDwellRule, waveGeometryRule],
    evidence: [],
    cautions: HOT_SOLDER_CAUTIONS,
  },
  {
    key: 'thermal-profile',
    stage: 'control',
    title: 'Thermal profile',
    asks: 'Does a measured board go through reflow as the solder and its parts need it?',
    version: 1,
    owner: 'production',
    approvers: ['design', 'production', 'quality'],
    parameters: [],
    limits: [
      reflowPeakTinLeadMin,
      reflowPeakTinLeadMax,
      reflowPeakLeadFreeMin,
      reflowPeakLeadFreeMax,
      aboveLiquidusTinLeadMin,
      aboveLiquidusTinLeadMax,
      aboveLiquidusLeadFreeMin,
      aboveLiquidusLeadFreeMax,
      soakLeadFreeMin,
      soakLeadFreeMax,
      peakAboveLiquidusMin,
      peakAboveLiquidusMax,
      aboveLiquidusUnlikeMin,
      aboveLiquidusUnlikeMax,
      profileRiseMax,
      profileFallMax,
      thermocouplesMin,
      profileSpreadMax,
      thermalProfileInterval,
    ],
    rules: [thermalProfileRule],
    evidence: [],
    cautions: ['Ovens, boards and thermocouples leave at soldering heat; fume extraction must run.'],
  },
  {
    key: 'irons',
    stage: 'control',
    title: 'Soldering irons',
    asks: 'Are the tips at their temperature, sound and grounded, and was each iron checked before it was used?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [tipTemperatureTarget, tipAccuracyEdition],
    limits: [
      tipCeilingTinLead,
      tipCeilingLeadFree,
      tipAboveLiquidusMax,
      tipAccuracyMax,
      tipHoldMax,
      tipCheckInterval,
      tipGroundMax,
      tipLeakageMax,
      groundCheckInterval,
      tipCheckGuard,
    ],
    rules: [tipTemperatureRule, tipChecksOnScheduleRule, tipGroundRule, groundChecksOnScheduleRule],
    evidence: [],
    cautions: [
      'A tip burns at 300 °C and more, and its fume rises to the face: stand, extraction, eye protection. Irons run on mains: damaged leads go out of use; repair is for licensed people.',
    ],
  },
  {
    key: 'process-charts',
    stage: 'control',
    title: 'Charts and their signals',
    asks: 'Does the process stay level, has every signal a recorded cause and answer, and does its spread leave room?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [processCharts, chartPhases, chartRules, capabilityAsked],
    limits: [processWindowGuard, capabilityMin, capabilityConfidenceMin],
    rules: [chartSignalsAnsweredRule, processCapabilityRule],
    evidence: [],
    cautions: [],
  },
]
