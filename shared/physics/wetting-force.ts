/**
 * Forces on a specimen held in molten solder: surface tension pulls it down
 * along its wettable perimeter, the displaced solder pushes it up.
 * Forces are positive downwards (wetting) and in millinewtons.
 * Source: the force balance of IEC 60068-2-69, F = γ·P·cos θ − ρ·g·V (from memory).
 */

/** Standard acceleration of free fall, m/s² (exact by convention). */
export const STANDARD_GRAVITY = 9.80665

/** A specimen in its solder: what the forces follow from. */
export interface ImmersedSpecimen {
  /** Only what solder can wet. */
  readonly perimeterMm: number
  /** Everything that displaces solder. */
  readonly sectionMm2: number
  readonly depthMm: number
  readonly surfaceTensionNPerM: number
  readonly densityGPerMl: number
}

/** The pull of surface tension at a contact angle of 0°: γ·P. 1 N/m along 1 mm is 1 mN. */
export const tensionMN = ({ perimeterMm, surfaceTensionNPerM }: ImmersedSpecimen): number =>
  surfaceTensionNPerM * perimeterMm

/** Weight of the solder that the immersed part displaces: ρ·g·A·h, in mN. */
export const buoyancyMN = ({ sectionMm2, depthMm, densityGPerMl }: ImmersedSpecimen): number =>
  densityGPerMl * sectionMm2 * depthMm * STANDARD_GRAVITY * 1e-3

/** The greatest force wetting can give, at a contact angle of 0°: γ·P − ρ·g·V. */
export const theoreticalForceMN = (specimen: ImmersedSpecimen): number => {
  requireSpecimen(specimen)
  return tensionMN(specimen) - buoyancyMN(specimen)
}

/**
 * The contact angle in degrees at a measured force (positive downwards):
 * acos((F + ρ·g·V) / γ·P). 90° lies on the buoyancy line, not on the zero line.
 * Undefined when the force is beyond what the stated surface tension can give:
 * then perimeter, depth or surface tension is wrong.
 */
export function contactAngleDeg(forceMN: number, specimen: ImmersedSpecimen): number | undefined {
  requireSpecimen(specimen)
  const cosine = (forceMN + buoyancyMN(specimen)) / tensionMN(specimen)
  // A hair over 1 is binary rounding error of a perfect 0°, not a contradiction.
  if (!(Math.abs(cosine) <= 1 + 1e-12)) return undefined
  return (Math.acos(Math.max(-1, Math.min(1, cosine))) * 180) / Math.PI
}

/** Throws RangeError unless every dimension and property is greater than zero. */
export function requireSpecimen(specimen: ImmersedSpecimen): void {
  const named: readonly (readonly [string, number])[] = [
    ['wettable perimeter', specimen.perimeterMm],
    ['section', specimen.sectionMm2],
    ['immersion depth', specimen.depthMm],
    ['surface tension', specimen.surfaceTensionNPerM],
    ['density of the solder', specimen.densityGPerMl],
  ]
  for (const [name, value] of named) {
    if (!(value > 0 && Number.isFinite(value))) {
      throw new RangeError(`The ${name} of a wetting-balance specimen must be greater than zero.`)
    }
  }
}
