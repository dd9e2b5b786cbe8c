import type { ItemDefinition } from '@/shared/plan/item'
import { assessmentItems } from './assessment'
import { controlItems } from './control'
import { evaluationItems } from './evaluation'
import { boardFinishItem } from './specification/board-finish'
import { conductorsItem } from './specification/conductors'
import { documentsItem } from './specification/documents'
import { holesAndLandsItem } from './specification/holes-and-lands'
import { interconnectionItem } from './specification/interconnection'
import { jointBudgetItem } from './specification/joint-budget'
import { jointGeometryItem } from './specification/joint-geometry'
import { laminateItem } from './specification/laminate'
import { leadFinishItem } from './specification/lead-finish'
import { solderAndFluxItem } from './specification/solder-and-flux'
import { solderingProcessItem } from './specification/soldering-process'
import { spacingsItem } from './specification/spacings'
import { storageItem } from './specification/storage'
import { thermalFatigueItem } from './specification/thermal-fatigue'

const technicalItems: readonly ItemDefinition[] = [
  jointBudgetItem,
  laminateItem,
  holesAndLandsItem,
  jointGeometryItem,
  conductorsItem,
  spacingsItem,
  interconnectionItem,
  boardFinishItem,
  leadFinishItem,
  storageItem,
  solderAndFluxItem,
  solderingProcessItem,
  thermalFatigueItem,
]

/** Documents set limits in every stage, so the register is judged over all of them. */
const everyLimit = [...technicalItems, ...evaluationItems, ...controlItems, ...assessmentItems].flatMap(
  (item) => item.limits,
)

/** What the specification stage settles, in the order of the route card. */
export const specificationItems: readonly ItemDefinition[] = [documentsItem(everyLimit), ...technicalItems]
