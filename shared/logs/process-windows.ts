import {
  leadFreeBathMin,
  leadFreeBathMax,
  tinLeadBathMin,
  tinLeadBathMax,
} from '@/shared/plan/limits/control-bath'
import {
  preheatLeadFreeMin,
  preheatLeadFreeMax,
  preheatTinLeadMin,
  preheatTinLeadMax,
} from '@/shared/plan/limits/control-wave'
import { ALLOYS, meltsAsItsFamily, type Alloy } from '@/shared/materials/alloys'
import {
  bathAboveLiquidusMin,
  bathAboveLiquidusMax,
  preheatBelowSolidusMin,
} from '@/shared/plan/limits/control-alloy'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import type { ValueOf } from '@/shared/plan/parameter'
import type { alloyFamily } from '@/shared/plan/parameters/programme'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import type { Unit } from '@/shared/quantity/unit'
import { optional, type Inputs } from '@/shared/rules/rule'
import { followingAlloy } from '@/shared/plan/alloy-requirement'
import { boundBy, type Bound, type ProcessWindow } from './logged-window'
import type { Process } from '@/shared/plan/soldering-baths'

type Family = ValueOf<typeof alloyFamily>

/** What a solder bath of either family is run at. */
export const bathRangeReads = {
  bathTinLeadMin: tinLeadBathMin,
  bathTinLeadMax: tinLeadBathMax,
  bathLeadFreeMin: leadFreeBathMin,
  bathLeadFreeMax: leadFreeBathMax,
  alloy: optional(solderAlloy),
  bathAboveMin: bathAboveLiquidusMin,
  bathAboveMax: bathAboveLiquidusMax,
}

/** What boards of either family enter the wave at. */
export const preheatRangeReads = {
  preheatTinLeadMin,
  preheatTinLeadMax,
  preheatLeadFreeMin,
  preheatLeadFreeMax,
  alloy: optional(solderAlloy),
  preheatBelowSolidus: preheatBelowSolidusMin,
}

/** Both requirements as a window. */
export const between = (min: GoverningRequirement, max: GoverningRequirement, unit: Unit): ProcessWindow => ({
  min: boundBy(min),
  max: boundBy(max),
  unit,
})

/** Least and most of a bath: what the family is run at, or as far above its liquidus where the alloy melts elsewhere. */
export function bathRequirements(
  family: Family,
  inputs: Inputs<typeof bathRangeReads>,
): readonly [min: GoverningRequirement, max: GoverningRequirement] {
  const [min, max] =
    family === 'tin-lead'
      ? [inputs.bathTinLeadMin, inputs.bathTinLeadMax]
      : [inputs.bathLeadFreeMin, inputs.bathLeadFreeMax]
  const alloy: Alloy | undefined = inputs.alloy && ALLOYS[inputs.alloy]
  if (!alloy || meltsAsItsFamily(alloy)) return [min, max]
  return [
    followingAlloy(min, alloy.liquidusC, inputs.bathAboveMin),
    followingAlloy(max, alloy.liquidusC, inputs.bathAboveMax),
  ]
}

/** Least and most of the upper side of a board as it enters the wave; never so hot that joints already made soften. */
export function preheatRequirements(
  family: Family,
  inputs: Inputs<typeof preheatRangeReads>,
): readonly [min: GoverningRequirement, max: GoverningRequirement] {
  const [min, max] =
    family === 'tin-lead'
      ? [inputs.preheatTinLeadMin, inputs.preheatTinLeadMax]
      : [inputs.preheatLeadFreeMin, inputs.preheatLeadFreeMax]
  const alloy: Alloy | undefined = inputs.alloy && ALLOYS[inputs.alloy]
  const { preheatBelowSolidus } = inputs
  if (!alloy || max.value <= alloy.solidusC - preheatBelowSolidus.value) return [min, max]
  return [min, followingAlloy(max, alloy.solidusC, preheatBelowSolidus, -1)]
}

/** A bath of the alloy; a selective fountain is run hotter, and has no upper end here. */
export function bathRange(
  family: Family,
  process: Process | undefined,
  inputs: Inputs<typeof bathRangeReads>,
): ProcessWindow {
  const { min, max, unit } = between(...bathRequirements(family, inputs), '°C')
  return process === 'selective' ? { min, unit } : { min, max, unit }
}

/** Immersion in mm, from its limits as shares of the board's thickness in %. */
export function immersionWindow(
  thicknessMm: number,
  min: GoverningRequirement,
  max: GoverningRequirement,
): ProcessWindow {
  const share = ({ value, document }: Bound): Bound => ({ value: (value / 100) * thicknessMm, document })
  return { min: share(boundBy(min)), max: share(boundBy(max)), unit: 'mm' }
}
