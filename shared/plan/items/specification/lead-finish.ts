import type { ItemDefinition } from '@/shared/plan/item'
import { brassBarrierLeast, goldFractionMost } from '@/shared/plan/limits/finishes'
import { leadFinishes } from '@/shared/plan/parameters/finishes'
import { brassBarrier } from '@/shared/rules/specification/brass-barrier'
import { goldFraction } from '@/shared/rules/specification/gold-fraction'
import { goldToSolder } from '@/shared/rules/specification/gold-to-solder'
import { leadFinishThickness } from '@/shared/rules/specification/lead-finish-thickness'

export const leadFinishItem: ItemDefinition = {
  key: 'lead-finish',
  stage: 'specification',
  title: 'Lead finishes',
  asks: 'Is every lead coated with something that solder wets after its time in store, and that does no harm in the joint?',
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [leadFinishes],
  limits: [brassBarrierLeast, goldFractionMost],
  rules: [leadFinishThickness, brassBarrier, goldToSolder, goldFraction],
  evidence: [],
  cautions: [],
}
