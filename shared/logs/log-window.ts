import { bathTemperatureTolerance } from '@/shared/plan/limits/control-bath'
import { immersionMin, immersionMax, waveDwellMin, waveDwellMax } from '@/shared/plan/limits/control-wave'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxControlMethod,
  fluxDensityTarget,
  fluxDensityTolerance,
} from '@/shared/plan/parameters/control-flux'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { Unit } from '@/shared/quantity/unit'
import { isLevel, type LevelCharacteristic } from './level-characteristics'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { optional, type Inputs } from '@/shared/rules/rule'
import { bothWindows, windowAround, type ProcessWindow } from './logged-window'
import {
  bathRange,
  bathRangeReads,
  between,
  immersionWindow,
  preheatRangeReads,
  preheatRequirements,
} from './process-windows'
import { keepsBath, passesWave } from '@/shared/plan/soldering-baths'

/** What the window of a logged quantity follows from. */
export const windowReads = {
  family: optional(alloyFamily),
  process: optional(solderingProcess),
  method: optional(fluxControlMethod),
  density: optional(fluxDensityTarget),
  densityTolerance: optional(fluxDensityTolerance),
  acid: optional(fluxAcidNumberTarget),
  acidTolerance: optional(fluxAcidNumberTolerance),
  bath: optional(bathTemperatureTarget),
  bathTolerance: bathTemperatureTolerance,
  ...bathRangeReads,
  dwellMin: waveDwellMin,
  dwellMax: waveDwellMax,
  ...preheatRangeReads,
  thickness: optional(boardThickness),
  immersionMin,
  immersionMax,
}
export type WindowInputs = Inputs<typeof windowReads>

/**
 * The specified window of what a log charts, in the unit of what is charted.
 * Undefined where the specification does not say yet, limits nothing, or the
 * programme solders or controls in another way.
 */
export const windowOf = (characteristic: string, inputs: WindowInputs): ProcessWindow | undefined =>
  isLevel(characteristic) ? WINDOWS[characteristic](inputs) : undefined

const WINDOWS: Readonly<Record<LevelCharacteristic, (inputs: WindowInputs) => ProcessWindow | undefined>> = {
  'flux-density': ({ method, density, densityTolerance }) =>
    method !== undefined && method !== 'density'
      ? undefined
      : around(density, densityTolerance, 'g/ml', 'specified density'),
  'flux-acid-number': ({ method, acid, acidTolerance }) =>
    method !== undefined && method !== 'acid-number'
      ? undefined
      : around(acid, acidTolerance, 'mg KOH/g', 'specified acid number'),
  'bath-temperature': (inputs) => {
    const { family, process, bath, bathTolerance } = inputs
    if (bath === undefined || family === undefined || !keepsBath(process)) return undefined
    return bothWindows(
      bathRange(family, process, inputs),
      windowAround(bath, bathTolerance.value, '°C', bathTolerance.document),
    )
  },
  'wave-contact': ({ process, dwellMin, dwellMax }) =>
    passesWave(process) ? between(dwellMin, dwellMax, 's') : undefined,
  'wave-preheat': (inputs) =>
    passesWave(inputs.process) && inputs.family !== undefined
      ? between(...preheatRequirements(inputs.family, inputs), '°C')
      : undefined,
  'wave-geometry': (inputs) =>
    passesWave(inputs.process) && inputs.thickness !== undefined
      ? immersionWindow(inputs.thickness, inputs.immersionMin, inputs.immersionMax)
      : undefined,
}

/** The same, from a programme's facts. */
export function windowOfLog(characteristic: string, facts: Facts): ProcessWindow | undefined {
  const inputs = inputsOf(windowReads, facts)
  return inputs && windowOf(characteristic, inputs)
}

const around = (
  target: number | undefined,
  tolerance: number | undefined,
  unit: Unit,
  document: string,
): ProcessWindow | undefined =>
  target === undefined || tolerance === undefined
    ? undefined
    : windowAround(target, tolerance, unit, document)
