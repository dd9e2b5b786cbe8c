/** Steam for conditioning is held so far below the local boiling point. Common practice, no published source. */
export const BELOW_BOILING_K = 7

/**
 * The boiling point of water at a height above the sea, °C, from the pressure of
 * the standard atmosphere. Units: metres; RangeError outside −500 to 11 000 m.
 * Source: ISO 2533 standard atmosphere (from memory); Antoine's equation for
 * water, 1 to 100 °C, constants 8.07131, 1730.63, 233.426 (from memory).
 */
export function boilingPointC(heightM: number): number {
  if (!(heightM >= -500 && heightM <= 11_000))
    throw new RangeError('The height of the laboratory lies between −500 and 11 000 m.')
  const pressureMmHg = 760 * (1 - 2.25577e-5 * heightM) ** 5.25588
  return 1730.63 / (8.07131 - Math.log10(pressureMmHg)) - 233.426
}

/** The temperature that steam conditioning is run at, at a height above the sea, °C. */
export const steamTemperatureC = (heightM: number): number => boilingPointC(heightM) - BELOW_BOILING_K
