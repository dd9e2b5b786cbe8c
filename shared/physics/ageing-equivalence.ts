import type { AgeingMethod } from '@/shared/materials/ageing-methods'
import { GAS_CONSTANT, HIGHEST_ENERGY, TIN_SILVER_ENERGIES } from '@/shared/materials/growth-laws'
import { HOURS_PER_MONTH } from '@/shared/quantity/calendar'
import { published } from '@/shared/sources/provenance'
import { BOLTZMANN_EV_PER_K, HUMIDITY_MODELS, arrheniusFactor, humidityFactor } from './acceleration-factor'

/**
 * The least and the greatest published energy of growth of the compound between
 * tin and copper, kJ/mol. They differ by more than two to one, so every
 * equivalence is a span.
 */
export const GROWTH_ENERGIES = {
  minKjMol: TIN_SILVER_ENERGIES.cu6sn5KjMol,
  maxKjMol: HIGHEST_ENERGY.kjMol,
  source: published(`Least: ${TIN_SILVER_ENERGIES.source.cite}. Greatest: ${HIGHEST_ENERGY.source.cite}`),
} as const

/** What an ageing stands for in storage, or why nothing can be said. */
export type AgeingEquivalence =
  | {
      readonly kind: 'span'
      readonly minMonths: number
      readonly maxMonths: number
      /** Each set of published constants with what it gives. */
      readonly models: readonly EquivalenceModel[]
      /** `growth of compound` bears on solderability; `corrosion` was fitted to something else. */
      readonly mechanism: 'growth of compound' | 'corrosion of aluminium in packages'
    }
  | { readonly kind: 'none'; readonly because: string }

/** One set of constants: how many hours in the store an hour of ageing stands for by it. */
export interface EquivalenceModel {
  readonly name: string
  readonly factor: number
  readonly months: number
}

/** The store that an ageing is compared with. */
export interface Store {
  readonly temperatureC: number
  readonly relativeHumidityPct: number
}

/**
 * The months in store that an ageing stands for, as a span over the published
 * constants. Dry heat grows the compound that a store grows (Arrhenius); damp
 * heat is given by Hallberg–Peck for what it is worth; steam has no equivalent.
 * Errors: RangeError for an impossible temperature or humidity.
 * Source: NIST/SEMATECH e-Handbook 8.1.5.1; Hallberg and Peck, Qual. Reliab. Eng. Int. 7 (1991) 169.
 */
export function ageingEquivalence(method: AgeingMethod, store: Store): AgeingEquivalence {
  const { acts, temperatureC, relativeHumidityPct, hours } = method
  if (acts === 'nothing') return { kind: 'none', because: 'nothing is aged: the surface is as received' }
  if (acts === 'steam') return { kind: 'none', because: STEAM_HAS_NONE }
  if (temperatureC === undefined)
    return { kind: 'none', because: 'the temperature of the ageing is not stated' }
  if (acts === 'dry heat') {
    const factors = [GROWTH_ENERGIES.minKjMol, GROWTH_ENERGIES.maxKjMol].map((energy) => ({
      name: `Arrhenius, ${energy} kJ/mol`,
      factor: arrheniusFactor(electronVolts(energy), { useC: store.temperatureC, testC: temperatureC }),
    }))
    return { kind: 'span', mechanism: 'growth of compound', ...spanOf(hours, factors) }
  }
  if (relativeHumidityPct === undefined)
    return { kind: 'none', because: 'the humidity of the ageing is not stated' }
  const factors = HUMIDITY_MODELS.map((model) => ({
    name: `${model.label}, n ${model.exponent}, ${model.activationEnergyEV} eV`,
    factor: humidityFactor(model, { use: store, test: { temperatureC, relativeHumidityPct } }),
  }))
  return { kind: 'span', mechanism: 'corrosion of aluminium in packages', ...spanOf(hours, factors) }
}

/** Why steam hours are never turned into months. */
export const STEAM_HAS_NONE =
  'no published relation ties steam hours to storage time: steam grows other oxides than a store does (J-STD-002 and J-STD-003 call it conditioning, not ageing)'

function spanOf(hours: number, factors: readonly { readonly name: string; readonly factor: number }[]) {
  const models = factors.map((one) => ({ ...one, months: (hours * one.factor) / HOURS_PER_MONTH }))
  const months = models.map((one) => one.months)
  return { minMonths: Math.min(...months), maxMonths: Math.max(...months), models }
}

/** kJ/mol as eV a particle: the ratio of the gas constant to Boltzmann's. */
const electronVolts = (kilojoulesPerMole: number): number =>
  (kilojoulesPerMole * 1e3 * BOLTZMANN_EV_PER_K) / GAS_CONSTANT
