import { boardFinishMax, boardFinishMin } from '@/shared/plan/parameters/finishes'
import { boardBuild, copperFoil } from '@/shared/plan/parameters/laminate'
import { barrelCopper, barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { optional } from '@/shared/rules/rule'

/** What `boardCopper` is worked out from; what is not specified yet takes nothing away. */
export const boardCopperReads = {
  foil: copperFoil,
  how: optional(boardBuild),
  holes: optional(leadHoles),
  wall: optional(barrelPlating),
  finishUm: optional(boardFinishMin),
  finishMostUm: optional(boardFinishMax),
  copperUm: optional(barrelCopper),
}
