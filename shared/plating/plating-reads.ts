import { platingGuard, voidShareMin } from '@/shared/plan/limits/evaluation-guards'
import {
  holeCopperMin,
  platingConfidenceMin,
  platingCoverageMin,
} from '@/shared/plan/limits/evaluation-plating'
import {
  boardFinish,
  boardFinishMin,
  boardFinishMax,
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
  finishMin: optional(boardFinishMin),
  finishMax: optional(boardFinishMax),
  nickel: optional(boardNickel),
  leads: optional(leadFinishes),
  holeCopper: holeCopperMin,
} as const

/** What is asked of the readings of a lot. */
export const platingDemandReads = {
  coverage: platingCoverageMin,
  platingConfidence: platingConfidenceMin,
  platingGuard,
  voidShare: voidShareMin,
} as const

export const platingDemandsFrom = (inputs: Inputs<typeof platingDemandReads>): PlatingDemands => ({
  coverage: fractionOf(inputs.coverage),
  confidence: fractionOf(inputs.platingConfidence),
  guardShare: inputs.platingGuard.value / 100,
  voidShare: inputs.voidShare.value / 100,
})

export const specificationFrom = (inputs: Inputs<typeof platingReads>): PlatingSpecification => ({
  boardFinish: inputs.finish,
  boardFinishMinUm: inputs.finishMin,
  boardFinishMaxUm: inputs.finishMax,
  boardNickelUm: inputs.nickel,
  leadFinishes: inputs.leads,
  holeCopper: { minUm: inputs.holeCopper.value, document: inputs.holeCopper.document },
})
