/** Square centimetres in a square inch, by definition of the inch. */
const CM2_PER_SQUARE_INCH = 6.4516

/**
 * Area washed in an extraction: both faces of the board and an allowance for
 * the components' own surfaces.
 *
 * Units: mm in, % of the faces' area for the allowance; cm² out. Throws
 * RangeError on a side that is not positive or a negative allowance.
 */
export function extractedAreaCm2(board: {
  lengthMm: number
  widthMm: number
  componentAllowancePct: number
}): number {
  const { lengthMm, widthMm, componentAllowancePct } = board
  if (!(lengthMm > 0) || !(widthMm > 0)) throw new RangeError('A board has a length and a width.')
  if (!(componentAllowancePct >= 0)) throw new RangeError('The component allowance cannot be negative.')
  return ((2 * lengthMm * widthMm) / 100) * (1 + componentAllowancePct / 100)
}

/**
 * Ionic residue as the mass of sodium chloride that would conduct as well:
 * concentration in the extract × its volume ÷ the area washed.
 *
 * Units: µg/ml, ml, cm²; the result in µg/cm². Throws RangeError outside the domain.
 * Source: solvent extract method of IPC-TM-650 2.3.25 (formula from memory).
 */
export function sodiumChlorideEquivalentUgPerCm2(extract: {
  concentrationUgPerMl: number
  solventMl: number
  areaCm2: number
}): number {
  const { concentrationUgPerMl, solventMl, areaCm2 } = extract
  if (!(concentrationUgPerMl >= 0)) throw new RangeError('A concentration cannot be negative.')
  if (!(solventMl > 0)) throw new RangeError('The extract needs a volume greater than zero.')
  if (!(areaCm2 > 0)) throw new RangeError('The area washed must be greater than zero.')
  return (concentrationUgPerMl * solventMl) / areaCm2
}

/** µg/in² from µg/cm². */
export const perSquareInch = (ugPerCm2: number): number => ugPerCm2 * CM2_PER_SQUARE_INCH
