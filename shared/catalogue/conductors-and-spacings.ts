import type { ItemDefinition } from './item'
import { conductorRiseMax } from '@/shared/plan/limits/conductors'
import {
  bridgingGapMin,
  bridgingRunMax,
  copperToEdgeMin,
  partsToEdgeMin,
} from '@/shared/plan/limits/spacings'
import {
  bridgingGuard,
  conductorDropGuard,
  conductorRiseGuard,
  edgeClearanceGuard,
  voltageSpacingGuard,
} from '@/shared/plan/limits/specification-guards'
import { conductorMethod, conductors } from '@/shared/plan/parameters/conductors'
import { netClasses } from '@/shared/plan/parameters/net-classes'
import { copperToEdge, partsToEdge, spacingEdition, spacings } from '@/shared/plan/parameters/spacings'
import { bridgingRisk } from '@/shared/rules/specification/bridging-risk'
import { conductorCurrent } from '@/shared/rules/specification/conductor-current'
import { conductorDrop } from '@/shared/rules/specification/conductor-drop'
import { edgeClearance } from '@/shared/rules/specification/edge-clearance'
import { voltageSpacing } from '@/shared/rules/specification/voltage-spacing'

export const conductorsAndSpacingsItem: ItemDefinition = {
  key: 'conductors-and-spacings',
  stage: 'specification',
  title: 'Conductors, spacings and edges',
  asks: 'Does every conductor carry its current, stand off its neighbours for voltage and solder, and keep clear of the edges?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [conductors, conductorMethod, spacings, spacingEdition, netClasses, copperToEdge, partsToEdge],
  limits: [
    conductorRiseMax,
    bridgingGapMin,
    bridgingRunMax,
    copperToEdgeMin,
    partsToEdgeMin,
    conductorRiseGuard,
    conductorDropGuard,
    voltageSpacingGuard,
    bridgingGuard,
    edgeClearanceGuard,
  ],
  rules: [conductorCurrent, conductorDrop, voltageSpacing, bridgingRisk, edgeClearance],
  evidence: [],
  cautions: [
    'Insulation from the mains, and any insulation people rely on, is judged by the product’s safety standard and a competent person, not here.',
  ],
}
