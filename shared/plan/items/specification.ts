import type { ItemDefinition } from '@/shared/plan/item'
import { assessmentItems } from './assessment'
import { controlItems } from './control'
import { evaluationItems } from './evaluation'
import { boardFinishItem } from './specification-items/board-finish'
import { conductorsItem } from './specification-items/conductors'
import { documentsItem } from './specification-items/documents'
import { holesAndLandsItem } from './specification-items/holes-and-lands'
import { interconnectionItem } from './specification-items/interconnection'
import { jointBudgetItem } from './specification-items/joint-budget'
import { jointGeometryItem } from './specification-items/joint-geometry'
import { laminateItem } from './specification-items/laminate'
import { leadFinishItem } from './specification-items/lead-finish'
import { solderAndFluxItem } from './specification-items/solder-and-flux'
import { solderingProcessItem } from './specification-items/soldering-process'
import { spacingsItem } from './specification-items/spacings'
import { storageItem } from './specification-items/storage'
import { thermalFatigueItem } from './specification-items/thermal-fatigue'

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
