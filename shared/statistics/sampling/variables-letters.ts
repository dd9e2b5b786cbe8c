import { requireOneOf } from '@/shared/statistics/argument-checks'
import { INSPECTION_LEVELS, type InspectionLevel } from '@/shared/statistics/sampling/code-letters'
import type { VariablesLetter } from '@/shared/statistics/sampling/variables-plan'

interface LotBand {
  /** The largest lot of the band; each band begins one above the band before it. */
  readonly lotUpTo: number
  /** One letter a level, in the order of VARIABLES_LEVELS. */
  readonly letters: string
}

/** The levels of the variables tables: S-1 and S-2 are not among them. */
export const VARIABLES_LEVELS = ['S-3', 'S-4', 'I', 'II', 'III'] as const

/**
 * Code letters of the variables plans. Lots in units of product.
 * Source: ANSI/ASQ Z1.9 table A-2 (from memory).
 */
export const VARIABLES_LOT_BANDS = [
  { lotUpTo: 8, letters: 'BBBBC' },
  { lotUpTo: 15, letters: 'BBBBD' },
  { lotUpTo: 25, letters: 'BBBCE' },
  { lotUpTo: 50, letters: 'BBCDF' },
  { lotUpTo: 90, letters: 'BBDEG' },
  { lotUpTo: 150, letters: 'BCEFH' },
  { lotUpTo: 280, letters: 'BDFGI' },
  { lotUpTo: 400, letters: 'CEGHJ' },
  { lotUpTo: 500, letters: 'CEGIJ' },
  { lotUpTo: 1200, letters: 'DFHJK' },
  { lotUpTo: 3200, letters: 'EGIKL' },
  { lotUpTo: 10_000, letters: 'FHJLM' },
  { lotUpTo: 35_000, letters: 'GIKMN' },
  { lotUpTo: 150_000, letters: 'HJLNP' },
  { lotUpTo: 500_000, letters: 'HKMPP' },
  { lotUpTo: Infinity, letters: 'HKNPP' },
] as const satisfies readonly LotBand[]

/**
 * The variables code letter for a lot. The two smallest special levels take the
 * letters of S-3, which asks for no less.
 * Throws RangeError for a lot below 2 and for an unknown level.
 */
export function variablesLetterFor(lotSize: number, level: InspectionLevel): VariablesLetter {
  if (!(lotSize >= 2)) throw new RangeError('A variables plan needs a lot of at least two.')
  requireOneOf(level, 'inspection level', INSPECTION_LEVELS)
  const column = Math.max(0, (VARIABLES_LEVELS as readonly string[]).indexOf(level))
  const band = VARIABLES_LOT_BANDS.find(({ lotUpTo }) => lotSize <= lotUpTo)!
  return band.letters[column] as VariablesLetter
}
