/** How a published or remembered value was obtained. */
export type Provenance = 'published' | 'common practice, no published source' | 'from memory' | 'computed'

/** Where a value comes from: the standard, paper or handbook with its section or table. */
export interface Source {
  readonly cite: string
  readonly how: Provenance
}
