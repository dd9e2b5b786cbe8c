import type { ItemDefinition } from './item'
import { contactAngle, fillEdition, leadProjection } from '@/shared/plan/parameters/joint-geometry'
import { holeFill } from '@/shared/rules/specification/hole-fill'
import { jointFillet } from '@/shared/rules/specification/joint-fillet'

export const jointGeometryItem: ItemDefinition = {
  key: 'joint-geometry',
  stage: 'specification',
  title: 'Shape of the joint',
  asks: 'What fillet, how much solder and how much fill does a sound joint of this board have?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [leadProjection, contactAngle, fillEdition],
  limits: [],
  rules: [jointFillet, holeFill],
  evidence: [],
  cautions: [],
}
