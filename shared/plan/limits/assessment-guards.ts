import { guard } from '@/shared/plan/limits/guard-bands'

export const defectBudgetGuard = guard(
  'defect-budget',
  'Only just shown: share of the defect budget',
  10,
  'Shown with less room than a tenth of the budget, the next defect may undo it',
)
export const ionicResidueGuard = guard(
  'ionic-residue',
  'Only just clean: share of the ionic limit',
  10,
  'Extract tests repeat to a tenth or so',
)
export const insulationGuard = guard(
  'insulation-resistance',
  'Only just insulating: share of the limit',
  100,
  'Resistance scatters over decades: within a factor of two of the limit is close',
)
export const sectionGuard = guard(
  'section',
  'Only just good in section: share of the limit',
  5,
  'Fill, voids, angles and layers are measured in a section to a twentieth or so',
)
export const lifeTestGuard = guard(
  'life-test',
  'Only just shown by life test: share of the failures allowed',
  10,
  'Shown with less than a tenth of the failures to spare, the next failure may undo it',
)
