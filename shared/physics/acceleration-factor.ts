/**
 * How many hours of use one hour of test stands for, when both run by the same
 * single mechanism. A factor says nothing once the mechanism changes.
 */

/** Boltzmann's constant, eV/K (exact since 2019 as far as printed here; NIST CODATA). */
export const BOLTZMANN_EV_PER_K = 8.617333262e-5

const ABSOLUTE_ZERO_C = -273.15

/**
 * Arrhenius factor between a use and a test temperature: exp((Ea/k)·(1/Tu − 1/Ts)).
 * Units: eV and °C; the result has none and is below 1 when the test is the cooler.
 * Throws RangeError below absolute zero or for an energy that is not positive.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 8.1.5.1.
 */
export function arrheniusFactor(
  activationEnergyEV: number,
  { useC, testC }: { useC: number; testC: number },
): number {
  if (!(activationEnergyEV > 0)) throw new RangeError('An activation energy must be greater than zero eV.')
  return Math.exp((activationEnergyEV / BOLTZMANN_EV_PER_K) * (1 / kelvin(useC) - 1 / kelvin(testC)))
}

/** A set of constants for heat and moisture together. */
export interface HumidityModel {
  readonly label: string
  readonly exponent: number
  readonly activationEnergyEV: number
}

/**
 * Two sets in wide use; they differ by a factor of two at ordinary conditions,
 * so both are always shown. Both were fitted to aluminium corroding in plastic
 * packages, not to a solderable surface.
 * Source: O. Hallberg and D. S. Peck, Qual. Reliab. Eng. Int. 7 (1991) 169
 * (exponent published, energy from memory); D. S. Peck, IRPS 1986 as in JEP122 (from memory).
 */
export const HUMIDITY_MODELS = [
  { label: 'Hallberg–Peck 1991', exponent: 3, activationEnergyEV: 0.9 },
  { label: 'Peck 1986', exponent: 2.66, activationEnergyEV: 0.79 },
] as const satisfies readonly HumidityModel[]

/** Temperature and humidity of a place or a chamber. */
export interface Climate {
  readonly temperatureC: number
  readonly relativeHumidityPct: number
}

/**
 * Factor for heat and moisture: (RHtest/RHuse)ⁿ · exp((Ea/k)·(1/Tu − 1/Ts)).
 * Throws RangeError for a relative humidity outside 0–100 %, 0 excluded.
 * Source: Hallberg and Peck, Qual. Reliab. Eng. Int. 7 (1991) 169.
 */
export function humidityFactor(model: HumidityModel, climates: { use: Climate; test: Climate }): number {
  const { use, test } = climates
  for (const { relativeHumidityPct } of [use, test]) {
    if (!(relativeHumidityPct > 0 && relativeHumidityPct <= 100)) {
      throw new RangeError('A relative humidity lies between 0 and 100 %, 0 excluded.')
    }
  }
  return (
    (test.relativeHumidityPct / use.relativeHumidityPct) ** model.exponent *
    arrheniusFactor(model.activationEnergyEV, { useC: use.temperatureC, testC: test.temperatureC })
  )
}

function kelvin(celsius: number): number {
  if (!(celsius > ABSOLUTE_ZERO_C)) throw new RangeError('A temperature must lie above −273.15 °C.')
  return celsius - ABSOLUTE_ZERO_C
}
