import { holeCopperLeast } from '@/shared/plan/limits/evaluation-plating'
import {
  boardFinish,
  boardFinishLeast,
  boardFinishMost,
  boardNickel,
  leadFinishes,
} from '@/shared/plan/parameters/finishes'
import { optional, type Inputs } from '@/shared/rules/rule'
import type { PlatingSpecification } from './plating-window'

/** What the specification says of plating, as far as it is filled in. */
export const platingReads = {
  finish: optional(boardFinish),
  finishLeast: optional(boardFinishLeast),
  finishMost: optional(boardFinishMost),
  nickel: optional(boardNickel),
  leads: optional(leadFinishes),
  holeCopper: holeCopperLeast,
} as const

export const specificationFrom = (inputs: Inputs<typeof platingReads>): PlatingSpecification => ({
  boardFinish: inputs.finish,
  boardFinishLeastUm: inputs.finishLeast,
  boardFinishMostUm: inputs.finishMost,
  boardNickelUm: inputs.nickel,
  leadFinishes: inputs.leads,
  holeCopper: { leastUm: inputs.holeCopper.value, document: inputs.holeCopper.document },
})
