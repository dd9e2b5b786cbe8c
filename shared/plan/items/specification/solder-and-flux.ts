import type { ItemDefinition } from '@/shared/plan/item'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { mixedMetals } from '@/shared/rules/specification/mixed-metals'

export const solderAndFluxItem: ItemDefinition = {
  key: 'solder-and-flux',
  stage: 'specification',
  title: 'Solder and flux',
  asks: 'Which alloy and flux make the joints, do the metals go together, and does the residue stay?',
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [solderAlloy],
  limits: [],
  rules: [mixedMetals],
  evidence: [{ kind: 'data sheet', label: 'Data sheets of solder and flux', required: false }],
  cautions: [
    'Solder may hold lead; fluxes and thinners burn and their fumes harm. Follow the safety data sheets and local rules.',
  ],
}
