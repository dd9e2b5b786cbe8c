import type { ItemDefinition } from './item'
import { insulationWithResidueMax, restrictedLeadMax, solidusMarginMin } from '@/shared/plan/limits/solder'
import { insulationWithResidueGuard, solidusGuard } from '@/shared/plan/limits/specification-guards'
import {
  deliveriesUntil,
  flux,
  fluxResidue,
  insulationNeeded,
  leadExemptions,
  leadRestriction,
  solderAlloy,
} from '@/shared/plan/parameters/solder'
import { creepMargin } from '@/shared/rules/specification/creep-margin'
import { fluxResidueRule } from '@/shared/rules/specification/flux-residue'
import { leadRestrictionRule } from '@/shared/rules/specification/lead-restriction'
import { mixedMetals } from '@/shared/rules/specification/mixed-metals'

export const solderAndFluxItem: ItemDefinition = {
  key: 'solder-and-flux',
  stage: 'specification',
  title: 'Solder and flux',
  asks: 'Which alloy and flux make the joints, do the metals go together, and does the residue stay?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [
    solderAlloy,
    flux,
    fluxResidue,
    insulationNeeded,
    leadRestriction,
    leadExemptions,
    deliveriesUntil,
  ],
  limits: [
    solidusMarginMin,
    insulationWithResidueMax,
    restrictedLeadMax,
    solidusGuard,
    insulationWithResidueGuard,
  ],
  rules: [mixedMetals, leadRestrictionRule, creepMargin, fluxResidueRule],
  evidence: [{ kind: 'data sheet', label: 'Data sheets of solder and flux', required: false }],
  cautions: [
    'Solder may hold lead; fluxes and thinners burn and their fumes harm. Follow the safety data sheets and local rules.',
  ],
}
