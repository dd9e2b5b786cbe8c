/** Grams of potassium hydroxide in a mole. Source: standard atomic weights. */
const GRAMS_PER_MOLE_KOH = 56.106

/**
 * Acid number of a flux: milligrams of potassium hydroxide that neutralise the
 * acid of one gram.
 *
 * Units: titrant in ml and mol/l, sample in g; the result in mg KOH/g. Throws
 * RangeError on a sample or titrant strength that is not positive.
 * Source: titration as in ISO 9455-3 and IPC-TM-650 2.3.13 (formula from memory).
 */
export function acidNumber(titration: {
  titrantMl: number
  titrantMolPerL: number
  sampleG: number
}): number {
  const { titrantMl, titrantMolPerL, sampleG } = titration
  if (!(titrantMl >= 0)) throw new RangeError('The titrant used cannot be negative.')
  if (!(titrantMolPerL > 0)) throw new RangeError('The titrant needs a strength greater than zero.')
  if (!(sampleG > 0)) throw new RangeError('The sample needs a mass greater than zero.')
  return (titrantMl * titrantMolPerL * GRAMS_PER_MOLE_KOH) / sampleG
}
