import type { ItemDefinition } from './item'
import {
  calibrationNoticeMin,
  distinctCategoriesMin,
  gaugeShareMax,
  studyPartsMin,
  studyPeopleMin,
} from '@/shared/plan/limits/evaluation-instruments'
import {
  holeCopperMin,
  platingCapabilityMin,
  platingConfidenceMin,
  platingCoverageMin,
} from '@/shared/plan/limits/evaluation-plating'
import {
  coverageGuard,
  gaugeShareGood,
  platingGuard,
  resultAgeGuard,
  samplingRiskGuard,
  variablesGuard,
  voidShareMin,
  wettingBalanceGuard,
  wettingTimeGuard,
} from '@/shared/plan/limits/evaluation-guards'
import {
  limitingQualityMax,
  normalityMin,
  sampleConfidenceMin,
  zeroAcceptanceConfidenceMin,
  zeroAcceptanceQualityMax,
} from '@/shared/plan/limits/evaluation-sampling'
import {
  coverageMin,
  floatTemperatureMin,
  floatTimeMin,
  holeRiseMin,
  testTemperatureToleranceMax,
  wettingTimeMax,
} from '@/shared/plan/limits/evaluation-solderability'
import { reaffirmationAgeMax } from '@/shared/plan/limits/evaluation-storage'
import { dewettingDropMax } from '@/shared/plan/limits/evaluation-wetting-balance'
import { ageingClaims } from '@/shared/plan/parameters/evaluation-ageing'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import {
  acceptableQualityLevel,
  inspectionLevel,
  reducedInspectionWanted,
  samplingScheme,
  switchingEdition,
} from '@/shared/plan/parameters/evaluation-sampling'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import {
  wettingBalanceAgreedBy,
  wettingBalanceCriteria,
} from '@/shared/plan/parameters/evaluation-wetting-balance'
import { moltenSolderCautions } from '@/shared/methods/solderability-conditions'
import { platingThickness as platingMethod } from '@/shared/methods/plating-thickness'
import { ageingStandsFor } from '@/shared/rules/evaluation/ageing-stands-for'
import { batchCoupons } from '@/shared/rules/evaluation/batch-coupons'
import { dipAndLookCoverage } from '@/shared/rules/evaluation/dip-and-look-coverage'
import { gaugesCapable } from '@/shared/rules/evaluation/gauges-capable'
import { inspectionState } from '@/shared/rules/evaluation/inspection-state'
import { instrumentsInCalibration } from '@/shared/rules/evaluation/instruments-in-calibration'
import { lotsDispositioned } from '@/shared/rules/evaluation/lots-dispositioned'
import { lotsNeededPresent } from '@/shared/rules/evaluation/lots-needed-present'
import { lotsTraced } from '@/shared/rules/evaluation/lots-traced'
import { platedHoleRise } from '@/shared/rules/evaluation/plated-hole-rise'
import { platingCapability } from '@/shared/rules/evaluation/plating-capability'
import { platingThickness } from '@/shared/rules/evaluation/plating-thickness'
import { receivingCheck } from '@/shared/rules/evaluation/receiving-check'
import { resultStillFresh } from '@/shared/rules/evaluation/result-still-fresh'
import { rotaryDipWettingTime } from '@/shared/rules/evaluation/rotary-dip-wetting-time'
import { samplingPlanRisk } from '@/shared/rules/evaluation/sampling-plan-risk'
import { solderFloatSoundness } from '@/shared/rules/evaluation/solder-float-soundness'
import { supplierResultsReaffirmed } from '@/shared/rules/evaluation/supplier-results-reaffirmed'
import { testConditionsAlike } from '@/shared/rules/evaluation/test-conditions-alike'
import { wettingBalanceCurves } from '@/shared/rules/evaluation/wetting-balance-curves'

/** The evaluation: what is bought in is shown to meet the specification before it is soldered. */
export const evaluationItems: readonly ItemDefinition[] = [
  {
    key: 'parts-evaluated',
    stage: 'evaluation',
    title: 'Parts to be evaluated',
    asks: 'Which boards, components and materials do the joints rest on, and has a lot of each been tested and accepted as ordered?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'quality'],
    parameters: [lotsNeeded],
    limits: [],
    rules: [lotsNeededPresent, receivingCheck, supplierResultsReaffirmed],
    evidence: [{ kind: 'certificate', label: 'Certificates of the suppliers', required: false }],
    cautions: [],
  },
  {
    key: 'sampling',
    stage: 'evaluation',
    title: 'Sampling',
    asks: 'How many pieces of each lot are tried, what may pass, and does a supplier’s history make the next sample larger or smaller?',
    version: 1,
    owner: 'quality',
    approvers: ['production', 'quality'],
    parameters: [
      inspectionLevel,
      acceptableQualityLevel,
      samplingScheme,
      reducedInspectionWanted,
      switchingEdition,
    ],
    limits: [
      limitingQualityMax,
      sampleConfidenceMin,
      zeroAcceptanceQualityMax,
      zeroAcceptanceConfidenceMin,
      samplingRiskGuard,
      normalityMin,
      variablesGuard,
    ],
    rules: [samplingPlanRisk, inspectionState],
    evidence: [],
    cautions: [
      'Tested pieces are spent: they carry solder or heat that no delivered piece has seen, and go into no assembly.',
    ],
  },
  {
    key: 'test-conditions',
    stage: 'evaluation',
    title: 'Test conditions and ageing',
    asks: 'Under which solder, flux, temperature and ageing is solderability tested, and what does the ageing stand for?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'quality'],
    parameters: [testConditions, ageingClaims],
    limits: [testTemperatureToleranceMax],
    rules: [testConditionsAlike, ageingStandsFor],
    evidence: [],
    cautions: [
      'Steam and ovens burn: open them away from the face, with gloves. Local codes and the maker’s instructions apply.',
    ],
  },
  {
    key: 'board-solderability',
    stage: 'evaluation',
    title: 'Solderability of boards',
    asks: 'Do tracks and plated holes of every batch wet in time, and does solder rise in the holes?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'production', 'quality'],
    parameters: [],
    limits: [wettingTimeMax, wettingTimeGuard, holeRiseMin],
    rules: [rotaryDipWettingTime, platedHoleRise, batchCoupons],
    evidence: [{ kind: 'report', label: 'Test report of the batch', required: false }],
    cautions: moltenSolderCautions,
  },
  {
    key: 'component-solderability',
    stage: 'evaluation',
    title: 'Solderability of components',
    asks: 'Do the leads of every component type take solder over their whole surface?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'production', 'quality'],
    parameters: [wettingBalanceCriteria, wettingBalanceAgreedBy],
    limits: [coverageMin, coverageGuard, dewettingDropMax, wettingBalanceGuard],
    rules: [dipAndLookCoverage, wettingBalanceCurves],
    evidence: [{ kind: 'report', label: 'Test report', required: false }],
    cautions: moltenSolderCautions,
  },
  {
    key: 'laminate-heat',
    stage: 'evaluation',
    title: 'Laminate under soldering heat',
    asks: 'Does the laminate as delivered stand the heat of soldering without blister or delamination?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'quality'],
    parameters: [],
    limits: [floatTemperatureMin, floatTimeMin],
    rules: [solderFloatSoundness],
    evidence: [],
    cautions: moltenSolderCautions,
  },
  {
    key: 'plating-measured',
    stage: 'evaluation',
    title: 'Plating as measured',
    asks: 'Does the plating on tracks, in holes and on leads reach its specified thickness, and how surely do the readings show it?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'quality'],
    parameters: [],
    limits: [
      platingCoverageMin,
      platingConfidenceMin,
      platingCapabilityMin,
      holeCopperMin,
      voidShareMin,
      platingGuard,
    ],
    rules: [platingThickness, platingCapability],
    evidence: [],
    cautions: platingMethod.cautions,
  },
  {
    key: 'instruments',
    stage: 'evaluation',
    title: 'Instruments',
    asks: 'Was every instrument in calibration on the day it was used, and can it tell good from bad?',
    version: 1,
    owner: 'quality',
    approvers: ['production', 'quality'],
    parameters: [],
    limits: [
      calibrationNoticeMin,
      gaugeShareMax,
      gaugeShareGood,
      distinctCategoriesMin,
      studyPartsMin,
      studyPeopleMin,
    ],
    rules: [instrumentsInCalibration, gaugesCapable],
    evidence: [{ kind: 'certificate', label: 'Calibration certificates', required: false }],
    cautions: [],
  },
  {
    key: 'lots-released',
    stage: 'evaluation',
    title: 'Lots released and traced',
    asks: 'What was decided about each lot, is its result still fresh, and into which assemblies did it go?',
    version: 1,
    owner: 'quality',
    approvers: ['production', 'quality'],
    parameters: [],
    limits: [reaffirmationAgeMax, resultAgeGuard],
    rules: [lotsDispositioned, resultStillFresh, lotsTraced],
    evidence: [],
    cautions: [],
  },
]
