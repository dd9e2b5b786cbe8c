import type { Source } from '@/shared/sources/source'

const SOURCE: Source = {
  cite: 'MIL-P-28809A, equivalence factors of extraction instruments',
  how: 'from memory',
}

/**
 * Ways of extracting ionic residue. An instrument that extracts more reads
 * higher: its reading is divided by its factor to compare with the manual rinse
 * that the limit was written for. A factor belongs to its edition and instrument.
 */
export const EXTRACTION_METHODS = {
  manual: { label: 'Manual rinse (factor 1.00)', factor: 1.0, source: SOURCE },
  'factor-1-39': { label: 'Instrument of factor 1.39', factor: 1.39, source: SOURCE },
  'factor-2-01': { label: 'Instrument of factor 2.01', factor: 2.01, source: SOURCE },
  'factor-3-25': { label: 'Instrument of factor 3.25', factor: 3.25, source: SOURCE },
} as const satisfies Record<string, ExtractionMethod>

interface ExtractionMethod {
  readonly label: string
  readonly factor: number
  readonly source: Source
}
