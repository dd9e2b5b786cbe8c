import type { ItemDefinition } from './item'
import {
  bowThroughHoleMax,
  bowWithSurfaceMountMax,
  floatUsedMax,
  glassTransitionMarginMin,
  limitedLaminateYearsMax,
} from '@/shared/plan/limits/laminate'
import {
  conductorCopperGuard,
  floatUsedGuard,
  glassTransitionGuard,
} from '@/shared/plan/limits/specification-guards'
import {
  boardBuild,
  boardThickness,
  bowAndTwist,
  copperFoil,
  copperLayers,
  glassTransition,
  laminate,
  serviceTemperature,
  solderExposures,
} from '@/shared/plan/parameters/laminate'
import { boardBuildRule } from '@/shared/rules/specification/board-build'
import { bowAndTwistRule } from '@/shared/rules/specification/bow-and-twist'
import { glassTransitionRule } from '@/shared/rules/specification/glass-transition'
import { laminatePlatedHoles } from '@/shared/rules/specification/laminate-plated-holes'
import { solderExposuresRule } from '@/shared/rules/specification/solder-exposures'

export const laminateItem: ItemDefinition = {
  key: 'laminate',
  stage: 'specification',
  title: 'Laminate',
  asks: 'Which base material carries the holes, the soldering heat and the service temperature?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [
    laminate,
    boardThickness,
    copperLayers,
    copperFoil,
    boardBuild,
    glassTransition,
    serviceTemperature,
    bowAndTwist,
    solderExposures,
  ],
  limits: [
    floatUsedMax,
    glassTransitionMarginMin,
    bowWithSurfaceMountMax,
    bowThroughHoleMax,
    limitedLaminateYearsMax,
    conductorCopperGuard,
    floatUsedGuard,
    glassTransitionGuard,
  ],
  rules: [laminatePlatedHoles, boardBuildRule, solderExposuresRule, glassTransitionRule, bowAndTwistRule],
  evidence: [{ kind: 'certificate', label: 'Laminate data sheet or certificate', required: false }],
  cautions: [],
}
