import { ALLOYS, meltsAsItsFamily, type Alloy } from '@/shared/materials/alloys'
import { followingAlloy } from '@/shared/plan/alloy-requirement'
import {
  aboveLiquidusUnlikeMin,
  aboveLiquidusUnlikeMax,
  peakAboveLiquidusMin,
  peakAboveLiquidusMax,
} from '@/shared/plan/limits/control-alloy'
import {
  aboveLiquidusLeadFreeMin,
  aboveLiquidusLeadFreeMax,
  aboveLiquidusTinLeadMin,
  aboveLiquidusTinLeadMax,
  profileFallMax,
  profileRiseMax,
  profileSpreadMax,
  reflowPeakLeadFreeMin,
  reflowPeakLeadFreeMax,
  reflowPeakTinLeadMin,
  reflowPeakTinLeadMax,
  soakLeadFreeMin,
  soakLeadFreeMax,
} from '@/shared/plan/limits/control-profile'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { between } from '@/shared/logs/process-windows'
import { optional, type Inputs } from '@/shared/rules/rule'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { boundBy, guarded, type ProcessWindow } from '@/shared/logs/logged-window'

/** Taken where the alloy is not chosen yet; the usual alloy of each family. */
const USUAL_LIQUIDUS_C = { 'tin-lead': 183, 'lead-free': 220 } as const

/** What the window of a profile follows from. */
export const profileReads = {
  family: alloyFamily,
  process: optional(solderingProcess),
  alloy: optional(solderAlloy),
  peakTinLeadMin: reflowPeakTinLeadMin,
  peakTinLeadMax: reflowPeakTinLeadMax,
  peakLeadFreeMin: reflowPeakLeadFreeMin,
  peakLeadFreeMax: reflowPeakLeadFreeMax,
  timeTinLeadMin: aboveLiquidusTinLeadMin,
  timeTinLeadMax: aboveLiquidusTinLeadMax,
  timeLeadFreeMin: aboveLiquidusLeadFreeMin,
  timeLeadFreeMax: aboveLiquidusLeadFreeMax,
  soakMin: soakLeadFreeMin,
  soakMax: soakLeadFreeMax,
  peakAboveMin: peakAboveLiquidusMin,
  peakAboveMax: peakAboveLiquidusMax,
  timeUnlikeMin: aboveLiquidusUnlikeMin,
  timeUnlikeMax: aboveLiquidusUnlikeMax,
  riseMax: profileRiseMax,
  fallMax: profileFallMax,
  spreadMax: profileSpreadMax,
  guard: processWindowGuard,
}

/** Each term of a profile with its window, and the temperature at which the solder is all molten. */
export interface ProfileWindows {
  readonly liquidusC: number
  readonly peak: ProcessWindow
  readonly aboveLiquidus: ProcessWindow
  /** Undefined where none is asked: tin-lead, and alloys that melt where the soak of others lies. */
  readonly soak: ProcessWindow | undefined
  readonly rise: ProcessWindow
  readonly fall: ProcessWindow
  readonly spread: ProcessWindow
}

type ProfileInputs = Inputs<typeof profileReads>

const alloyOf = ({ alloy }: ProfileInputs): Alloy | undefined => alloy && ALLOYS[alloy]

/** Least and most of the peak: what the family is run at, or as far above its liquidus where the alloy melts elsewhere. */
export function peakRequirements(
  inputs: ProfileInputs,
): readonly [min: GoverningRequirement, max: GoverningRequirement] {
  const [min, max] =
    inputs.family === 'tin-lead'
      ? [inputs.peakTinLeadMin, inputs.peakTinLeadMax]
      : [inputs.peakLeadFreeMin, inputs.peakLeadFreeMax]
  const alloy = alloyOf(inputs)
  if (!alloy || meltsAsItsFamily(alloy)) return [min, max]
  return [
    followingAlloy(min, alloy.liquidusC, inputs.peakAboveMin),
    followingAlloy(max, alloy.liquidusC, inputs.peakAboveMax),
  ]
}

function timeRequirements(
  inputs: ProfileInputs,
): readonly [min: GoverningRequirement, max: GoverningRequirement] {
  const alloy = alloyOf(inputs)
  if (alloy && !meltsAsItsFamily(alloy)) return [inputs.timeUnlikeMin, inputs.timeUnlikeMax]
  return inputs.family === 'tin-lead'
    ? [inputs.timeTinLeadMin, inputs.timeTinLeadMax]
    : [inputs.timeLeadFreeMin, inputs.timeLeadFreeMax]
}

/** The window of a reflow profile for the alloy that is specified, else for the usual one of the family. */
export function profileWindows(inputs: ProfileInputs): ProfileWindows {
  const alloy = alloyOf(inputs)
  const soaks = inputs.family !== 'tin-lead' && (!alloy || meltsAsItsFamily(alloy))
  const window = (one: ProcessWindow): ProcessWindow => guarded(one, inputs.guard)
  return {
    liquidusC: alloy?.liquidusC ?? USUAL_LIQUIDUS_C[inputs.family],
    peak: window(between(...peakRequirements(inputs), '°C')),
    aboveLiquidus: window(between(...timeRequirements(inputs), 's')),
    soak: soaks ? window(between(inputs.soakMin, inputs.soakMax, 's')) : undefined,
    rise: window({ max: boundBy(inputs.riseMax), unit: 'K/s' }),
    fall: window({ max: boundBy(inputs.fallMax), unit: 'K/s' }),
    spread: window({ max: boundBy(inputs.spreadMax), unit: 'K' }),
  }
}
