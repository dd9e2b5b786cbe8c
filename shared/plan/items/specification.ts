import type { ItemDefinition } from '@/shared/plan/item'
import { boardFinishItem } from './specification/board-finish'
import { conductorsItem } from './specification/conductors'
import { holesAndLandsItem } from './specification/holes-and-lands'
import { jointBudgetItem } from './specification/joint-budget'
import { laminateItem } from './specification/laminate'
import { leadFinishItem } from './specification/lead-finish'
import { solderAndFluxItem } from './specification/solder-and-flux'
import { spacingsItem } from './specification/spacings'

/** What the specification stage settles, in the order of the route card. */
export const specificationItems: readonly ItemDefinition[] = [
  jointBudgetItem,
  laminateItem,
  holesAndLandsItem,
  conductorsItem,
  spacingsItem,
  boardFinishItem,
  leadFinishItem,
  solderAndFluxItem,
]
