import { DENSITY_GCM3 } from '@/shared/materials/metals'

export interface GoldLayer {
  readonly areaMm2: number
  readonly thicknessUm: number
}

/** Mass of gold on surfaces that solder covers, mg; all of it is taken to dissolve. */
export function goldMassMg(layers: readonly GoldLayer[]): number {
  return layers.reduce((sum, { areaMm2, thicknessUm }) => {
    if (!(areaMm2 >= 0 && thicknessUm >= 0)) {
      throw new RangeError('A gold layer has an area and a thickness that are not negative.')
    }
    return sum + areaMm2 * thicknessUm * 1e-3 * DENSITY_GCM3.gold
  }, 0)
}

/**
 * Mass share of gold in a joint: m_Au/(m_Au + m_solder), between 0 and 1.
 * Units: mg, mm³, g/cm³ (= mg/mm³). Never compare it with a limit in percent by volume.
 * Throws RangeError when there is no solder.
 */
export function goldMassFraction(goldMg: number, solderMm3: number, solderDensityGcm3: number): number {
  if (!(goldMg >= 0)) throw new RangeError('A mass of gold must not be negative.')
  if (!(solderMm3 > 0 && solderDensityGcm3 > 0))
    throw new RangeError('A joint without solder holds no share of gold.')
  return goldMg / (goldMg + solderMm3 * solderDensityGcm3)
}

/**
 * The gold thickness at which a surface reaches a mass share, µm:
 * (w/(1 − w)) · ρ_solder · (V/A)/ρ_gold.
 */
export function goldThicknessAtUm(
  fraction: number,
  solderMm3: number,
  areaMm2: number,
  solderDensityGcm3: number,
): number {
  if (!(fraction > 0 && fraction < 1))
    throw new RangeError('A mass share lies between 0 and 1, both excluded.')
  if (!(areaMm2 > 0)) throw new RangeError('A gold surface has an area greater than zero.')
  return (((fraction / (1 - fraction)) * solderDensityGcm3 * solderMm3) / areaMm2 / DENSITY_GCM3.gold) * 1e3
}
