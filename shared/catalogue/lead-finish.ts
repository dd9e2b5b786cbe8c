import type { ItemDefinition } from './item'
import {
  brassBarrierMin,
  goldFlashMax,
  goldFractionMax,
  nickelUnderFlashMin,
  nickelUnderFlashMax,
  palladiumCoatMin,
  palladiumCoatMax,
  silverCoatMin,
  silverCoatMax,
} from '@/shared/plan/limits/finishes'
import { goldFractionGuard } from '@/shared/plan/limits/specification-guards'
import { leadFinishes } from '@/shared/plan/parameters/finishes'
import { brassBarrier } from '@/shared/rules/specification/brass-barrier'
import { goldFraction } from '@/shared/rules/specification/gold-fraction'
import { goldToSolder } from '@/shared/rules/specification/gold-to-solder'
import { leadFinishThickness } from '@/shared/rules/specification/lead-finish-thickness'
import { whiskerMitigation } from '@/shared/rules/specification/whisker-mitigation'

export const leadFinishItem: ItemDefinition = {
  key: 'lead-finish',
  stage: 'specification',
  title: 'Lead finishes, gold and whiskers',
  asks: 'Is every lead coated with something that solder wets after its time in store, and that does no harm in the joint?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [leadFinishes],
  limits: [
    brassBarrierMin,
    goldFlashMax,
    nickelUnderFlashMin,
    nickelUnderFlashMax,
    silverCoatMin,
    silverCoatMax,
    palladiumCoatMin,
    palladiumCoatMax,
    goldFractionMax,
    goldFractionGuard,
  ],
  rules: [leadFinishThickness, brassBarrier, goldToSolder, goldFraction, whiskerMitigation],
  evidence: [],
  cautions: [],
}
