import {
  leadFreeBathLeast,
  leadFreeBathMost,
  tinLeadBathLeast,
  tinLeadBathMost,
} from '@/shared/plan/limits/control-bath'
import {
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
  preheatTinLeadLeast,
  preheatTinLeadMost,
} from '@/shared/plan/limits/control-wave'
import type { ValueOf } from '@/shared/plan/parameter'
import type { alloyFamily } from '@/shared/plan/parameters/programme'
import type { Ruling } from '@/shared/plan/requirement'
import type { Unit } from '@/shared/quantity/unit'
import type { Inputs } from '@/shared/rules/rule'
import { boundBy, type Bound, type ProcessWindow } from './logged-window'
import type { Process } from '@/shared/plan/soldering-baths'

type Family = ValueOf<typeof alloyFamily>

/** What a solder bath of either family is run at. */
export const bathRangeReads = {
  bathTinLeadLeast: tinLeadBathLeast,
  bathTinLeadMost: tinLeadBathMost,
  bathLeadFreeLeast: leadFreeBathLeast,
  bathLeadFreeMost: leadFreeBathMost,
}

/** What boards of either family enter the wave at. */
export const preheatRangeReads = {
  preheatTinLeadLeast,
  preheatTinLeadMost,
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
}

/** Both rulings as a window. */
export const between = (least: Ruling, most: Ruling, unit: Unit): ProcessWindow => ({
  least: boundBy(least),
  most: boundBy(most),
  unit,
})

/** Least and most of a bath of the family. */
export const bathRulings = (family: Family, inputs: Inputs<typeof bathRangeReads>) =>
  family === 'tin-lead'
    ? ([inputs.bathTinLeadLeast, inputs.bathTinLeadMost] as const)
    : ([inputs.bathLeadFreeLeast, inputs.bathLeadFreeMost] as const)

/** Least and most of the upper side of a board as it enters the wave. */
export const preheatRulings = (family: Family, inputs: Inputs<typeof preheatRangeReads>) =>
  family === 'tin-lead'
    ? ([inputs.preheatTinLeadLeast, inputs.preheatTinLeadMost] as const)
    : ([inputs.preheatLeadFreeLeast, inputs.preheatLeadFreeMost] as const)

/** A bath of the family; a selective fountain is run hotter, and has no upper end here. */
export function bathRange(
  family: Family,
  process: Process | undefined,
  inputs: Inputs<typeof bathRangeReads>,
): ProcessWindow {
  const { least, most, unit } = between(...bathRulings(family, inputs), '°C')
  return process === 'selective' ? { least, unit } : { least, most, unit }
}

/** Immersion in mm, from its limits as shares of the board's thickness in %. */
export function immersionWindow(thicknessMm: number, least: Ruling, most: Ruling): ProcessWindow {
  const share = ({ value, document }: Bound): Bound => ({ value: (value / 100) * thicknessMm, document })
  return { least: share(boundBy(least)), most: share(boundBy(most)), unit: 'mm' }
}
