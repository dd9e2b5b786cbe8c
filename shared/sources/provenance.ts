import type { Provenance, Source } from './source'

const from =
  (how: Provenance) =>
  (cite: string): Source => ({ cite, how })

/** A value seen in print; name the print where it was not the standard itself. */
export const published = from('published')
/** A value that nobody has checked against the text. */
export const fromMemory = from('from memory')
/** Arithmetic on other values of the program. */
export const computed = from('computed')
/** A fact of the trade that no document is known to state. */
export const commonPractice = from('common practice, no published source')
