import type { AlloyFamily } from '@/shared/materials/alloys'
import type { CycleTest, UseCycle } from '@/shared/plan/parameters/thermal-fatigue'
import {
  NORRIS_LANDZBERG,
  norrisLandzberg,
  type NorrisLandzbergConstants,
} from '@/shared/reliability/models/norris-landzberg'
import type { ThermalCycle } from '@/shared/reliability/models/thermal-cycle'

const DAYS_PER_YEAR = 365

const cycleOfTest = ({ swingK, hottestC, perDay, dwellMin }: CycleTest): ThermalCycle => ({
  swingK,
  maximumC: hottestC,
  cyclesPerDay: perDay,
  dwellMin,
})

const cycleOfService = ({ swingK, hottestC, perYear, dwellMin }: UseCycle): ThermalCycle => ({
  swingK,
  maximumC: hottestC,
  cyclesPerDay: perYear / DAYS_PER_YEAR,
  dwellMin,
})

/** The 2005 tin-silver-copper constants were fitted with dwells; the others with cycles a day. */
export const accelerate = (model: NorrisLandzbergConstants, test: CycleTest, cycle: UseCycle) =>
  norrisLandzberg(model, { test: cycleOfTest(test), use: cycleOfService(cycle) }, model.slownessBy)

/** Test cycles that stand for one kind of cycle over the whole service. */
export const testCyclesFor = (
  model: NorrisLandzbergConstants,
  test: CycleTest,
  cycle: UseCycle,
  years: number,
): number => (cycle.perYear * years) / accelerate(model, test, cycle).factor

/** The published constants that speak of the programme's alloys. */
export const fatigueModelsFor = (family: AlloyFamily): readonly NorrisLandzbergConstants[] =>
  NORRIS_LANDZBERG.filter((model) => model.family === family)
