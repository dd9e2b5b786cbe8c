/** A word as this project uses it, alike in code, on screens, in tests and in documents. */
export interface Term {
  readonly term: string
  /** What it means here, in a sentence or two. */
  readonly meaning: string
  /** The standard or handbook whose word it is; `trade` where it is common practice, `own` where it is this project's. */
  readonly from: { readonly kind: 'standard'; readonly cite: string } | { readonly kind: 'trade' | 'own' }
  /** Other words met for the same thing, which this project does not use. */
  readonly insteadOf?: readonly string[]
}

const standard = (cite: string): Term['from'] => ({ kind: 'standard', cite })
export const TRADE: Term['from'] = { kind: 'trade' }
export const OWN: Term['from'] = { kind: 'own' }
export const ISO_9000 = (clause: string): Term['from'] => standard(`ISO 9000:2015, ${clause}`)
export const ISO_3534_2 = standard('ISO 3534-2:2006')
export const IPC_T_50 = standard('IPC-T-50, Terms and definitions for interconnecting and packaging')
export { standard }
