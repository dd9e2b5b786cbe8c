import type { ItemDefinition } from './item'
import { assessmentItems } from './assessment-items'
import { controlItems } from './control-items'
import { evaluationItems } from './evaluation-items'
import { boardFinishItem } from './board-finish'
import { conductorsAndSpacingsItem } from './conductors-and-spacings'
import { documentsItem } from './documents'
import { holesAndLandsItem } from './holes-and-lands'
import { interconnectionItem } from './interconnection'
import { jointBudgetItem } from './joint-budget'
import { jointGeometryItem } from './joint-geometry'
import { laminateItem } from './laminate'
import { leadFinishItem } from './lead-finish'
import { partsListItem } from './parts-list'
import { solderAndFluxItem } from './solder-and-flux'
import { solderingProcessItem } from './soldering-process'
import { storageItem } from './storage'

const technicalItems: readonly ItemDefinition[] = [
  jointBudgetItem,
  laminateItem,
  partsListItem,
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
