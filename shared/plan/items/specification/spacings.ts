import type { ItemDefinition } from '@/shared/plan/item'
import { spacingEdition, spacings } from '@/shared/plan/parameters/spacings'
import { voltageSpacing } from '@/shared/rules/specification/voltage-spacing'

export const spacingsItem: ItemDefinition = {
  key: 'spacings',
  stage: 'specification',
  title: 'Spacings and layout',
  asks: 'Are conductors far enough apart for their voltage and for the solder not to bridge them?',
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [spacings, spacingEdition],
  limits: [],
  rules: [voltageSpacing],
  evidence: [],
  cautions: [
    'Insulation from the mains, and any insulation people rely on, is judged by the product’s safety standard and a competent person, not here.',
  ],
}
