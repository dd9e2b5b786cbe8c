/**
 * Density of a liquid flux brought from the temperature of the reading to the
 * reference temperature, by a constant coefficient of expansion.
 *
 * Units: g/ml, °C, g/ml per K. Throws RangeError on a density or coefficient
 * that is not positive or a temperature that is no number.
 * Source: linear thermal expansion; about 0.00085 g/ml per K for alcohol-based
 * flux is common practice, no published source.
 */
export function densityAtReference(reading: {
  densityGPerMl: number
  temperatureC: number
  referenceC: number
  coefficientGPerMlPerK: number
}): number {
  const { densityGPerMl, temperatureC, referenceC, coefficientGPerMlPerK } = reading
  if (!(densityGPerMl > 0)) throw new RangeError('A density must be greater than zero.')
  if (!(coefficientGPerMlPerK >= 0)) throw new RangeError('The density coefficient cannot be negative.')
  if (!Number.isFinite(temperatureC) || !Number.isFinite(referenceC))
    throw new RangeError('A density needs the temperature at which it was read.')
  return densityGPerMl + coefficientGPerMlPerK * (temperatureC - referenceC)
}

/**
 * Litres to add to each litre so that a blend reaches a target density: of
 * thinner when the flux is too dense, of fresh flux when it is too thin. All
 * densities at the same temperature. Zero when nothing need be added.
 *
 * found·1 + added·x = target·(1 + x), hence x = (found − target) / (target − added).
 *
 * Units: g/ml in, litres per litre out. Throws RangeError when the addition
 * cannot bring the flux to its target (it lies on the wrong side of it).
 * Source: balance of masses, volumes taken as additive.
 */
export function additionPerLitre(densities: {
  foundGPerMl: number
  targetGPerMl: number
  addedGPerMl: number
}): number {
  const { foundGPerMl: found, targetGPerMl: target, addedGPerMl: added } = densities
  if (!(found > 0) || !(target > 0) || !(added > 0))
    throw new RangeError('Densities must be greater than zero.')
  if (found === target) return 0
  const litres = (found - target) / (target - added)
  if (!(litres > 0) || !Number.isFinite(litres))
    throw new RangeError('What is added lies on the same side of the target as the flux: it cannot reach it.')
  return litres
}

/**
 * Share of the flux to draw off and replace, the volume staying the same, so
 * that the blend reaches a target density.
 *
 * found·(1 − y) + added·y = target, hence y = (found − target) / (found − added).
 *
 * Units: g/ml in, litres per litre out. Throws RangeError as `additionPerLitre`.
 * Source: balance of masses, volumes taken as additive.
 */
export function exchangePerLitre(densities: {
  foundGPerMl: number
  targetGPerMl: number
  addedGPerMl: number
}): number {
  const { foundGPerMl: found, targetGPerMl: target, addedGPerMl: added } = densities
  if (!(found > 0) || !(target > 0) || !(added > 0))
    throw new RangeError('Densities must be greater than zero.')
  if (found === target) return 0
  const share = (found - target) / (found - added)
  if (!(share > 0 && share <= 1))
    throw new RangeError('What is added lies on the same side of the target as the flux: it cannot reach it.')
  return share
}
