import { requireCount, requireOneOf } from '../argument-checks'

/** I and O are left out, as in the standard. */
export const CODE_LETTERS = [
  ...(['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] as const),
  ...(['J', 'K', 'L', 'M', 'N', 'P', 'Q', 'R'] as const),
] as const
export type CodeLetter = (typeof CODE_LETTERS)[number]

/** Special levels S-1 … S-4 for small samples, general levels I … III; II unless told otherwise. */
export const INSPECTION_LEVELS = ['S-1', 'S-2', 'S-3', 'S-4', 'I', 'II', 'III'] as const
export type InspectionLevel = (typeof INSPECTION_LEVELS)[number]

interface LotBand {
  /** The largest lot of the band; each band begins one above the band before it. */
  lotUpTo: number
  /** One letter a level, in the order of INSPECTION_LEVELS. */
  letters: string
}

/** The smallest lot of the table. */
export const SMALLEST_LOT = 2

/**
 * Sample size code letters. Lots in units of product.
 *
 * Source: MIL-STD-105E (10 May 1989), table I; two transcriptions read, equal in all 105 cells.
 * ISO 2859-1 table 1 is the same.
 */
export const LOT_BANDS = [
  { lotUpTo: 8, letters: 'AAAAAAB' },
  { lotUpTo: 15, letters: 'AAAAABC' },
  { lotUpTo: 25, letters: 'AABBBCD' },
  { lotUpTo: 50, letters: 'ABBCCDE' },
  { lotUpTo: 90, letters: 'BBCCCEF' },
  { lotUpTo: 150, letters: 'BBCDDFG' },
  { lotUpTo: 280, letters: 'BCDEEGH' },
  { lotUpTo: 500, letters: 'BCDEFHJ' },
  { lotUpTo: 1200, letters: 'CCEFGJK' },
  { lotUpTo: 3200, letters: 'CDEGHKL' },
  { lotUpTo: 10_000, letters: 'CDFGJLM' },
  { lotUpTo: 35_000, letters: 'CDFHKMN' },
  { lotUpTo: 150_000, letters: 'DEGJLNP' },
  { lotUpTo: 500_000, letters: 'DEGJMPQ' },
  { lotUpTo: Infinity, letters: 'DEHKNQR' },
] as const satisfies readonly LotBand[]

/**
 * The code letter for a lot at an inspection level.
 *
 * Units: units of product. Errors: RangeError for a lot below 2: a single unit is simply inspected; and for an unknown level.
 */
export function codeLetterFor(lotSize: number, level: InspectionLevel): CodeLetter {
  requireCount(lotSize, 'lot size', SMALLEST_LOT)
  requireOneOf(level, 'inspection level', INSPECTION_LEVELS)
  const band = LOT_BANDS.find(({ lotUpTo }) => lotSize <= lotUpTo)!
  return band.letters[INSPECTION_LEVELS.indexOf(level)] as CodeLetter
}
