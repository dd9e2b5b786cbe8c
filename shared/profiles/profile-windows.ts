import { ALLOYS, meltsAsItsFamily, type Alloy } from '@/shared/materials/alloys'
import { followingAlloy } from '@/shared/plan/alloy-ruling'
import {
  aboveLiquidusUnlikeLeast,
  aboveLiquidusUnlikeMost,
  peakAboveLiquidusLeast,
  peakAboveLiquidusMost,
} from '@/shared/plan/limits/control-alloy'
import {
  aboveLiquidusLeadFreeLeast,
  aboveLiquidusLeadFreeMost,
  aboveLiquidusTinLeadLeast,
  aboveLiquidusTinLeadMost,
  profileFallMost,
  profileRiseMost,
  profileSpreadMost,
  reflowPeakLeadFreeLeast,
  reflowPeakLeadFreeMost,
  reflowPeakTinLeadLeast,
  reflowPeakTinLeadMost,
  soakLeadFreeLeast,
  soakLeadFreeMost,
} from '@/shared/plan/limits/control-profile'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { Ruling } from '@/shared/plan/requirement'
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
  peakTinLeadLeast: reflowPeakTinLeadLeast,
  peakTinLeadMost: reflowPeakTinLeadMost,
  peakLeadFreeLeast: reflowPeakLeadFreeLeast,
  peakLeadFreeMost: reflowPeakLeadFreeMost,
  timeTinLeadLeast: aboveLiquidusTinLeadLeast,
  timeTinLeadMost: aboveLiquidusTinLeadMost,
  timeLeadFreeLeast: aboveLiquidusLeadFreeLeast,
  timeLeadFreeMost: aboveLiquidusLeadFreeMost,
  soakLeast: soakLeadFreeLeast,
  soakMost: soakLeadFreeMost,
  peakAboveLeast: peakAboveLiquidusLeast,
  peakAboveMost: peakAboveLiquidusMost,
  timeUnlikeLeast: aboveLiquidusUnlikeLeast,
  timeUnlikeMost: aboveLiquidusUnlikeMost,
  riseMost: profileRiseMost,
  fallMost: profileFallMost,
  spreadMost: profileSpreadMost,
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
export function peakRulings(inputs: ProfileInputs): readonly [least: Ruling, most: Ruling] {
  const [least, most] =
    inputs.family === 'tin-lead'
      ? [inputs.peakTinLeadLeast, inputs.peakTinLeadMost]
      : [inputs.peakLeadFreeLeast, inputs.peakLeadFreeMost]
  const alloy = alloyOf(inputs)
  if (!alloy || meltsAsItsFamily(alloy)) return [least, most]
  return [
    followingAlloy(least, alloy.liquidusC, inputs.peakAboveLeast),
    followingAlloy(most, alloy.liquidusC, inputs.peakAboveMost),
  ]
}

function timeRulings(inputs: ProfileInputs): readonly [least: Ruling, most: Ruling] {
  const alloy = alloyOf(inputs)
  if (alloy && !meltsAsItsFamily(alloy)) return [inputs.timeUnlikeLeast, inputs.timeUnlikeMost]
  return inputs.family === 'tin-lead'
    ? [inputs.timeTinLeadLeast, inputs.timeTinLeadMost]
    : [inputs.timeLeadFreeLeast, inputs.timeLeadFreeMost]
}

/** The window of a reflow profile for the alloy that is specified, else for the usual one of the family. */
export function profileWindows(inputs: ProfileInputs): ProfileWindows {
  const alloy = alloyOf(inputs)
  const soaks = inputs.family !== 'tin-lead' && (!alloy || meltsAsItsFamily(alloy))
  const window = (one: ProcessWindow): ProcessWindow => guarded(one, inputs.guard)
  return {
    liquidusC: alloy?.liquidusC ?? USUAL_LIQUIDUS_C[inputs.family],
    peak: window(between(...peakRulings(inputs), '°C')),
    aboveLiquidus: window(between(...timeRulings(inputs), 's')),
    soak: soaks ? window(between(inputs.soakLeast, inputs.soakMost, 's')) : undefined,
    rise: window({ most: boundBy(inputs.riseMost), unit: 'K/s' }),
    fall: window({ most: boundBy(inputs.fallMost), unit: 'K/s' }),
    spread: window({ most: boundBy(inputs.spreadMost), unit: 'K' }),
  }
}
