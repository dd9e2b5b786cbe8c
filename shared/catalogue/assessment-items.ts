import type { ItemDefinition } from './item'
import {
  budgetConfidenceMin,
  firstPassYieldMin,
  inspectedJointsMin,
  magnificationMax,
} from '@/shared/plan/limits/assessment-inspection'
import {
  demonstrationConfidenceMin,
  inspectorKappaMin,
  sectionAngleMax,
  sectionFillMin,
  sectionIntermetallicMin,
  sectionIntermetallicMax,
  sectionVoidMax,
} from '@/shared/plan/limits/assessment-proof'
import {
  directionChanceMax,
  firstPassYieldConfidenceMin,
  inspectorKappaConfidenceMin,
  extractedAssembliesMin,
  insulationPatternsMin,
  wearOutShapeMin,
  wearOutShapeMax,
} from '@/shared/plan/limits/assessment-evidence'
import {
  defectBudgetGuard,
  insulationGuard,
  ionicResidueGuard,
  lifeTestGuard,
  sectionGuard,
} from '@/shared/plan/limits/assessment-guards'
import { insulationResistanceMin, ionicResidueMax } from '@/shared/plan/limits/assessment-residue'
import { reworkHeatsMax } from '@/shared/plan/limits/assessment-rework'
import {
  boardLength,
  boardWidth,
  componentPlaces,
  inspectedAssembliesShare,
} from '@/shared/plan/parameters/assessment-inspection'
import {
  agreementStudyAsked,
  fieldRecordAsked,
  lifeCyclesNeeded,
  lifeTestAsked,
  microsectionsAsked,
  workingHourCost,
} from '@/shared/plan/parameters/assessment-proof'
import { cleanlinessEdition, insulationTest } from '@/shared/plan/parameters/assessment-residue'
import { defectChartPhases, defectCharts } from '@/shared/plan/parameters/defect-charts'
import { defectDirection } from '@/shared/rules/assessment/defect-direction'
import { defectsAgainstBudget } from '@/shared/rules/assessment/defects-against-budget'
import { defectSignalsAnswered } from '@/shared/rules/assessment/defect-signals-answered'
import { fieldReturnsAgainstBudget } from '@/shared/rules/assessment/field-returns'
import { firstPassYield } from '@/shared/rules/assessment/first-pass-yield'
import { fluxRemovalTrial } from '@/shared/rules/assessment/flux-removal-trial'
import { inspectionCoverage } from '@/shared/rules/assessment/inspection-coverage'
import { inspectionMagnification } from '@/shared/rules/assessment/inspection-magnification'
import { inspectorAgreement } from '@/shared/rules/assessment/inspector-agreement'
import { inspectorsTrained } from '@/shared/rules/assessment/inspectors-trained'
import { insulationResistanceRule } from '@/shared/rules/assessment/insulation-resistance'
import { ionicCleanlinessRule } from '@/shared/rules/assessment/ionic-cleanliness'
import { microsectionsSound } from '@/shared/rules/assessment/microsections-sound'
import { reliabilityDemonstrated } from '@/shared/rules/assessment/reliability-demonstrated'
import { reworkLimits } from '@/shared/rules/assessment/rework-limits'

/** The assessment: what was made is inspected against the budget the specification set. */
export const assessmentItems: readonly ItemDefinition[] = [
  {
    key: 'flux-removal',
    stage: 'assessment',
    title: 'Flux removal',
    asks: 'Is what is left of the flux harmless: little enough in the extract, and insulating in damp heat?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [cleanlinessEdition, insulationTest],
    limits: [
      ionicResidueMax,
      ionicResidueGuard,
      extractedAssembliesMin,
      insulationResistanceMin,
      insulationPatternsMin,
      insulationGuard,
    ],
    rules: [fluxRemovalTrial, ionicCleanlinessRule, insulationResistanceRule],
    evidence: [],
    cautions: [
      'Cleaning and extract solvents burn or harm by their vapour: safety data sheets and local codes rule on ventilation, gloves and waste.',
    ],
  },
  {
    key: 'visual-inspection',
    stage: 'assessment',
    title: 'Visual inspection',
    asks: 'How many assemblies and joints were inspected, with what magnification, by whom, and did what they found stay level?',
    version: 1,
    owner: 'quality',
    approvers: ['production', 'quality'],
    parameters: [inspectedAssembliesShare, agreementStudyAsked, defectCharts, defectChartPhases],
    limits: [inspectedJointsMin, magnificationMax, inspectorKappaMin, inspectorKappaConfidenceMin],
    rules: [
      inspectionCoverage,
      inspectionMagnification,
      inspectorsTrained,
      inspectorAgreement,
      defectSignalsAnswered,
    ],
    evidence: [],
    cautions: [],
  },
  {
    key: 'electrical-test',
    stage: 'assessment',
    title: 'Electrical test',
    asks: 'How many boards pass at the first test, and which failures come from joints?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [],
    limits: [firstPassYieldMin, firstPassYieldConfidenceMin],
    rules: [firstPassYield],
    evidence: [],
    cautions: [
      'Mains or high voltage on test: only by people licensed or instructed for it, behind the guards that local codes ask for.',
    ],
  },
  {
    key: 'defects-against-budget',
    stage: 'assessment',
    title: 'Defects against the budget',
    asks: 'Does what was seen show the defect rate that the specification asks for, or how many more joints must be seen?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'production', 'quality'],
    parameters: [boardLength, boardWidth, componentPlaces],
    limits: [budgetConfidenceMin, defectBudgetGuard, directionChanceMax],
    rules: [defectsAgainstBudget, defectDirection],
    evidence: [],
    cautions: [],
  },
  {
    key: 'rework',
    stage: 'assessment',
    title: 'Rework',
    asks: 'How many joints were mended, how often was each heated, and what did it cost?',
    version: 1,
    owner: 'production',
    approvers: ['production', 'quality'],
    parameters: [workingHourCost],
    limits: [reworkHeatsMax],
    rules: [reworkLimits],
    evidence: [],
    cautions: ['Hot metal, and fume at the face: use extraction; wash hands after handling leaded solder.'],
  },
  {
    key: 'further-proof',
    stage: 'assessment',
    title: 'Microsections and life test',
    asks: 'Where the programme asks for it: what do joints show when cut open, and when cycled to the end?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'quality'],
    parameters: [microsectionsAsked, lifeTestAsked, lifeCyclesNeeded],
    limits: [
      sectionFillMin,
      sectionVoidMax,
      sectionAngleMax,
      sectionIntermetallicMin,
      sectionIntermetallicMax,
      sectionGuard,
      demonstrationConfidenceMin,
      wearOutShapeMin,
      wearOutShapeMax,
      lifeTestGuard,
    ],
    rules: [microsectionsSound, reliabilityDemonstrated],
    evidence: [{ kind: 'report', label: 'Report of microsections or life test', required: false }],
    cautions: [
      'Cutting, moulding and etching need guards and extraction; shock chambers burn and freeze: gloves and interlocks.',
    ],
  },
  {
    key: 'field-feedback',
    stage: 'assessment',
    title: 'Field returns and lessons',
    asks: 'After release: do returns stay within the budget, and what do they teach?',
    version: 1,
    owner: 'quality',
    approvers: ['design', 'quality'],
    parameters: [fieldRecordAsked],
    limits: [],
    rules: [fieldReturnsAgainstBudget],
    evidence: [{ kind: 'report', label: 'Lessons learned', required: false }],
    cautions: [],
  },
]
