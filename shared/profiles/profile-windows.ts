import { ALLOYS } from '@/shared/materials/alloys'
import {
  aboveLiquidusLeadFreeLeast,
  aboveLiquidusLeadFreeMost,
  aboveLiquidusTinLeadLeast,
  aboveLiquidusTinLeadMost,
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
import { optional, type Inputs } from '@/shared/rules/rule'
import { boundBy, type ProcessWindow } from '@/shared/logs/logged-window'

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
  riseMost: profileRiseMost,
  spreadMost: profileSpreadMost,
}

/** Each term of a profile with its window, and the temperature at which the solder is all molten. */
export interface ProfileWindows {
  readonly liquidusC: number
  readonly peak: ProcessWindow
  readonly aboveLiquidus: ProcessWindow
  /** Undefined where none is asked: tin-lead. */
  readonly soak: ProcessWindow | undefined
  readonly rise: ProcessWindow
  readonly spread: ProcessWindow
}

/** The window of a reflow profile for the alloy family that is specified. */
export function profileWindows(inputs: Inputs<typeof profileReads>): ProfileWindows {
  const tinLead = inputs.family === 'tin-lead'
  return {
    liquidusC: inputs.alloy ? ALLOYS[inputs.alloy].liquidusC : USUAL_LIQUIDUS_C[inputs.family],
    peak: {
      least: boundBy(tinLead ? inputs.peakTinLeadLeast : inputs.peakLeadFreeLeast),
      most: boundBy(tinLead ? inputs.peakTinLeadMost : inputs.peakLeadFreeMost),
      unit: '°C',
    },
    aboveLiquidus: {
      least: boundBy(tinLead ? inputs.timeTinLeadLeast : inputs.timeLeadFreeLeast),
      most: boundBy(tinLead ? inputs.timeTinLeadMost : inputs.timeLeadFreeMost),
      unit: 's',
    },
    soak: tinLead
      ? undefined
      : { least: boundBy(inputs.soakLeast), most: boundBy(inputs.soakMost), unit: 's' },
    rise: { most: boundBy(inputs.riseMost), unit: 'K/s' },
    spread: { most: boundBy(inputs.spreadMost), unit: 'K' },
  }
}
