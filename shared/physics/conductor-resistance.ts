import { COPPER_RESISTANCE } from '@/shared/materials/conductor-current-laws'

/**
 * Resistance of a copper conductor in ohms: ρ·L/(w·t) · (1 + α·(T − 20 °C)).
 *
 * Units: mm, µm, °C. Throws RangeError on a size that is not positive.
 * Source: IEC 60028 for ρ and α (from memory). Plating and finish can change
 * the resistance of a finished track by up to two to one.
 */
export function conductorResistanceOhm(
  conductor: { readonly lengthMm: number; readonly widthMm: number; readonly copperUm: number },
  temperatureC: number,
  resistivityOhmM: number = COPPER_RESISTANCE.resistivityOhmM,
): number {
  const { lengthMm, widthMm, copperUm } = conductor
  if (!(lengthMm > 0 && widthMm > 0 && copperUm > 0)) {
    throw new RangeError('A conductor has a length, a width and a thickness greater than zero.')
  }
  const cold = (resistivityOhmM * lengthMm * 1e-3) / (widthMm * 1e-3 * copperUm * 1e-6)
  return cold * (1 + COPPER_RESISTANCE.perKelvin * (temperatureC - COPPER_RESISTANCE.referenceC))
}
