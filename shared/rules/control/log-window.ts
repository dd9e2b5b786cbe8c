import {
  bathTemperatureTolerance,
  leadFreeBathLeast,
  leadFreeBathMost,
  tinLeadBathLeast,
  tinLeadBathMost,
} from '@/shared/plan/limits/control-bath'
import {
  immersionLeast,
  immersionMost,
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
  preheatTinLeadLeast,
  preheatTinLeadMost,
  waveDwellLeast,
  waveDwellMost,
} from '@/shared/plan/limits/control-wave'
import type { Parameter } from '@/shared/plan/parameter'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxDensityTarget,
  fluxDensityTolerance,
} from '@/shared/plan/parameters/control-flux'
import type { Unit } from '@/shared/quantity/unit'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { rulingOn, type Limit } from '@/shared/plan/requirement'
import type { Facts } from '@/shared/rules/facts'
import { bothWindows, boundBy, windowAround, type Bound, type ProcessWindow } from './logged-window'

/**
 * The specified window of what a log charts, in the unit of what is charted.
 * Undefined where the specification does not say yet, or limits nothing.
 */
export function windowOfLog(characteristic: string, facts: Facts): ProcessWindow | undefined {
  const family = valueOf(alloyFamily, facts)
  switch (characteristic) {
    case 'flux-density':
      return around(fluxDensityTarget, fluxDensityTolerance, 'g/ml', 'specified density', facts)
    case 'flux-acid-number':
      return around(fluxAcidNumberTarget, fluxAcidNumberTolerance, 'mg KOH/g', 'specified acid number', facts)
    case 'wave-contact':
      return { least: bound(waveDwellLeast, facts), most: bound(waveDwellMost, facts), unit: 's' }
    case 'bath-temperature': {
      const target = valueOf(bathTemperatureTarget, facts)
      if (target === undefined || family === undefined) return undefined
      const tolerance = rulingOn(bathTemperatureTolerance, facts.requirements)
      const [least, most] =
        family === 'tin-lead' ? [tinLeadBathLeast, tinLeadBathMost] : [leadFreeBathLeast, leadFreeBathMost]
      return bothWindows(
        { least: bound(least, facts), most: bound(most, facts), unit: '°C' },
        windowAround(target, tolerance.value, '°C', tolerance.document),
      )
    }
    case 'wave-preheat': {
      if (family === undefined) return undefined
      const [least, most] =
        family === 'tin-lead'
          ? [preheatTinLeadLeast, preheatTinLeadMost]
          : [preheatLeadFreeLeast, preheatLeadFreeMost]
      return { least: bound(least, facts), most: bound(most, facts), unit: '°C' }
    }
    case 'wave-geometry': {
      const thicknessMm = valueOf(boardThickness, facts)
      if (thicknessMm === undefined) return undefined
      const share = ({ value, document }: Bound): Bound => ({ value: (value / 100) * thicknessMm, document })
      return {
        least: share(bound(immersionLeast, facts)),
        most: share(bound(immersionMost, facts)),
        unit: 'mm',
      }
    }
    default:
      return undefined
  }
}

function around(
  target: Parameter<number>,
  tolerance: Parameter<number>,
  unit: Unit,
  document: string,
  facts: Facts,
): ProcessWindow | undefined {
  const [middle, reach] = [valueOf(target, facts), valueOf(tolerance, facts)]
  return middle === undefined || reach === undefined ? undefined : windowAround(middle, reach, unit, document)
}

const valueOf = <T>({ key }: Parameter<T>, facts: Facts): T | undefined =>
  facts.values.get(key) as T | undefined
const bound = (limit: Limit, { requirements }: Facts): Bound => boundBy(rulingOn(limit, requirements))
