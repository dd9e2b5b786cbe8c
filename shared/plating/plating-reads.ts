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
import { fractionOf } from '@/shared/plan/limit-fraction'
import type { ToleranceContent } from '@/shared/statistics/tolerance/tolerance-content'
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

/** All that a lot's plating is judged by. */
export type PlatingInputs = Inputs<typeof platingReads & typeof platingDemandReads>

/** What is asked of readings beside the window. Shares are fractions. */
export interface PlatingDemands extends ToleranceContent {
  /** Where no uncertainty is stated, this share of the limit stands in for it. */
  readonly guardShare: number
  /** Copper on a hole wall thinner than this share of its least is taken as missing. */
  readonly voidShare: number
}

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
