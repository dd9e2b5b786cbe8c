import type { ItemDefinition } from '@/shared/plan/item'
import {
  bridgingGapLeast,
  bridgingRunMost,
  copperToEdgeLeast,
  partsToEdgeLeast,
} from '@/shared/plan/limits/spacings'
import { copperToEdge, partsToEdge, spacingEdition, spacings } from '@/shared/plan/parameters/spacings'
import { bridgingRisk } from '@/shared/rules/specification/bridging-risk'
import { edgeClearance } from '@/shared/rules/specification/edge-clearance'
import { voltageSpacing } from '@/shared/rules/specification/voltage-spacing'

export const spacingsItem: ItemDefinition = {
  key: 'spacings',
  stage: 'specification',
  title: 'Spacings and edges',
  asks: 'Are conductors far enough apart for their voltage and for the solder not to bridge them, and clear of the edges?',
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [spacings, spacingEdition, copperToEdge, partsToEdge],
  limits: [bridgingGapLeast, bridgingRunMost, copperToEdgeLeast, partsToEdgeLeast],
  rules: [voltageSpacing, bridgingRisk, edgeClearance],
  evidence: [],
  cautions: [
    'Insulation from the mains, and any insulation people rely on, is judged by the product’s safety standard and a competent person, not here.',
  ],
}
