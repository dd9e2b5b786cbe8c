import { platingGuard, voidShareLeast } from '@/shared/plan/limits/evaluation-guards'
import {
  holeCopperLeast,
  platingConfidenceLeast,
  platingCoverageLeast,
} from '@/shared/plan/limits/evaluation-plating'
import {
  boardFinish,
  boardFinishLeast,
  boardFinishMost,
  boardNickel,
  leadFinishes,
} from '@/shared/plan/parameters/finishes'
import { optional, type Inputs } from '@/shared/rules/rule'
import { fractionOf } from '@/shared/sampling/sampling-reads'
import type { PlatingDemands } from './judge-plating-group'
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

/** What is asked of the readings of a lot. */
export const platingDemandReads = {
  coverage: platingCoverageLeast,
  platingConfidence: platingConfidenceLeast,
  platingGuard,
  voidShare: voidShareLeast,
} as const

export const platingDemandsFrom = (inputs: Inputs<typeof platingDemandReads>): PlatingDemands => ({
  coverage: fractionOf(inputs.coverage),
  confidence: fractionOf(inputs.platingConfidence),
  guardShare: inputs.platingGuard.value / 100,
  voidShare: inputs.voidShare.value / 100,
})

export const specificationFrom = (inputs: Inputs<typeof platingReads>): PlatingSpecification => ({
  boardFinish: inputs.finish,
  boardFinishLeastUm: inputs.finishLeast,
  boardFinishMostUm: inputs.finishMost,
  boardNickelUm: inputs.nickel,
  leadFinishes: inputs.leads,
  holeCopper: { leastUm: inputs.holeCopper.value, document: inputs.holeCopper.document },
})
