import type { ItemDefinition } from '@/shared/plan/item'
import { assessmentItems } from './assessment'
import { controlItems } from './control'
import { evaluationItems } from './evaluation'
import { boardFinishItem } from './specification-items/board-finish'
import { conductorsAndSpacingsItem } from './specification-items/conductors-and-spacings'
import { documentsItem } from './specification-items/documents'
import { holesAndLandsItem } from './specification-items/holes-and-lands'
import { interconnectionItem } from './specification-items/interconnection'
import { jointBudgetItem } from './specification-items/joint-budget'
import { jointGeometryItem } from './specification-items/joint-geometry'
import { laminateItem } from './specification-items/laminate'
import { leadFinishItem } from './specification-items/lead-finish'
import { solderAndFluxItem } from './specification-items/solder-and-flux'
import { solderingProcessItem } from './specification-items/soldering-process'
import { storageItem } from './specification-items/storage'

const technicalItems: readonly ItemDefinition[] = [
  jointBudgetItem,
  laminateItem,
  holesAndLandsItem,
  jointGeometryItem,
  conductorsAndSpacingsItem,
  interconnectionItem,
  boardFinishItem,
  leadFinishItem,
  storageItem,
  solderAndFluxItem,
  solderingProcessItem,
]

/** Documents set limits in every stage, so the register is judged over all of them. */
const everyLimit = [...technicalItems, ...evaluationItems, ...controlItems, ...assessmentItems].flatMap(
  (item) => item.limits,
)

/** What the specification stage settles, in the order of the route card. */
export const specificationItems: readonly ItemDefinition[] = [documentsItem(everyLimit), ...technicalItems]
