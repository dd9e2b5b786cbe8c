/**
 * Where the editions of the switching rules differ. Tightening, the return from tightened and the
 * return from reduced inspection are the same in all.
 */
export interface SwitchingRules {
  edition: string
  /** What earns reduced inspection. */
  reducedAfter: 'ten lots accepted' | 'switching score of 30'
  /** What ends inspection until the supplier has acted. */
  discontinuedAfter: 'five lots rejected on tightened' | 'ten lots on tightened'
}

/** Source: MIL-STD-105E (10 May 1989), 4.7 and 4.8 (read in a reproduction). */
export const MIL_STD_105E: SwitchingRules = {
  edition: 'MIL-STD-105E',
  reducedAfter: 'ten lots accepted',
  discontinuedAfter: 'five lots rejected on tightened',
}

/** Source: ISO 2859-1:1999, 9.3 and 9.4 (from memory). */
export const ISO_2859_1: SwitchingRules = {
  edition: 'ISO 2859-1',
  reducedAfter: 'switching score of 30',
  discontinuedAfter: 'five lots rejected on tightened',
}

/** Source: MIL-STD-105D, 8.4 (from memory). */
export const MIL_STD_105D: SwitchingRules = {
  edition: 'MIL-STD-105D',
  reducedAfter: 'ten lots accepted',
  discontinuedAfter: 'ten lots on tightened',
}
