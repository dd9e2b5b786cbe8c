import type { ItemDefinition } from './item'
import {
  capillaryRiseMin,
  leadProjectionClass3Max,
  leadProjectionMax,
} from '@/shared/plan/limits/joint-geometry'
import {
  capillaryRiseGuard,
  filletAngleGuard,
  leadStatusGuard,
} from '@/shared/plan/limits/specification-guards'
import {
  contactAngle,
  fillEdition,
  leadProjection,
  leadProjectionAtMost,
} from '@/shared/plan/parameters/joint-geometry'
import { holeFill } from '@/shared/rules/specification/hole-fill'
import { leadProjectionRule } from '@/shared/rules/specification/lead-projection'
import { jointFillet } from '@/shared/rules/specification/joint-fillet'

export const jointGeometryItem: ItemDefinition = {
  key: 'joint-geometry',
  stage: 'specification',
  title: 'Shape of the joint',
  asks: 'What fillet, how much solder how much fill and how long a lead does a sound joint of this board have?',
  version: 2,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [leadProjection, leadProjectionAtMost, contactAngle, fillEdition],
  limits: [
    leadProjectionMax,
    leadProjectionClass3Max,
    capillaryRiseMin,
    filletAngleGuard,
    leadStatusGuard,
    capillaryRiseGuard,
  ],
  rules: [jointFillet, holeFill, leadProjectionRule],
  evidence: [],
  cautions: [],
}
