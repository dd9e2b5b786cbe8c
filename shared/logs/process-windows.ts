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
import { ALLOYS, meltsAsItsFamily, type Alloy } from '@/shared/materials/alloys'
import {
  bathAboveLiquidusLeast,
  bathAboveLiquidusMost,
  preheatBelowSolidusLeast,
} from '@/shared/plan/limits/control-alloy'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import type { ValueOf } from '@/shared/plan/parameter'
import type { alloyFamily } from '@/shared/plan/parameters/programme'
import type { Ruling } from '@/shared/plan/requirement'
import type { Unit } from '@/shared/quantity/unit'
import { optional, type Inputs } from '@/shared/rules/rule'
import { followingAlloy } from '@/shared/plan/alloy-ruling'
import { boundBy, type Bound, type ProcessWindow } from './logged-window'
import type { Process } from '@/shared/plan/soldering-baths'

type Family = ValueOf<typeof alloyFamily>

/** What a solder bath of either family is run at. */
export const bathRangeReads = {
  bathTinLeadLeast: tinLeadBathLeast,
  bathTinLeadMost: tinLeadBathMost,
  bathLeadFreeLeast: leadFreeBathLeast,
  bathLeadFreeMost: leadFreeBathMost,
  alloy: optional(solderAlloy),
  bathAboveLeast: bathAboveLiquidusLeast,
  bathAboveMost: bathAboveLiquidusMost,
}

/** What boards of either family enter the wave at. */
export const preheatRangeReads = {
  preheatTinLeadLeast,
  preheatTinLeadMost,
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
  alloy: optional(solderAlloy),
  preheatBelowSolidus: preheatBelowSolidusLeast,
}

/** Both rulings as a window. */
export const between = (least: Ruling, most: Ruling, unit: Unit): ProcessWindow => ({
  least: boundBy(least),
  most: boundBy(most),
  unit,
})

/** Least and most of a bath: what the family is run at, or as far above its liquidus where the alloy melts elsewhere. */
export function bathRulings(
  family: Family,
  inputs: Inputs<typeof bathRangeReads>,
): readonly [least: Ruling, most: Ruling] {
  const [least, most] =
    family === 'tin-lead'
      ? [inputs.bathTinLeadLeast, inputs.bathTinLeadMost]
      : [inputs.bathLeadFreeLeast, inputs.bathLeadFreeMost]
  const alloy: Alloy | undefined = inputs.alloy && ALLOYS[inputs.alloy]
  if (!alloy || meltsAsItsFamily(alloy)) return [least, most]
  return [
    followingAlloy(least, alloy.liquidusC, inputs.bathAboveLeast),
    followingAlloy(most, alloy.liquidusC, inputs.bathAboveMost),
  ]
}

/** Least and most of the upper side of a board as it enters the wave; never so hot that joints already made soften. */
export function preheatRulings(
  family: Family,
  inputs: Inputs<typeof preheatRangeReads>,
): readonly [least: Ruling, most: Ruling] {
  const [least, most] =
    family === 'tin-lead'
      ? [inputs.preheatTinLeadLeast, inputs.preheatTinLeadMost]
      : [inputs.preheatLeadFreeLeast, inputs.preheatLeadFreeMost]
  const alloy: Alloy | undefined = inputs.alloy && ALLOYS[inputs.alloy]
  const { preheatBelowSolidus } = inputs
  if (!alloy || most.value <= alloy.solidusC - preheatBelowSolidus.value) return [least, most]
  return [least, followingAlloy(most, alloy.solidusC, preheatBelowSolidus, -1)]
}

/** A bath of the alloy; a selective fountain is run hotter, and has no upper end here. */
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
