import type { TrailEntry } from './entry'
import type { TrailSeal } from './trail-seal'

/** One signed gate as an exported bundle states it. */
export type BundleGate = {
  readonly stage: string
  readonly signedAt: string
  /** The newest entry when the gate was signed; root and hash cover entries 1 to this one. */
  readonly seq: number
  readonly merkleRoot: string
  readonly headHash: string
}

/** The trail of something of the works, as far as a programme's gates rest on it. */
export type BundleWorks = {
  readonly kind: string
  readonly code: string
  readonly entries: readonly TrailEntry[]
}

/** A programme's trail as a file that anyone can check without the program that wrote it. */
export type TrailBundle = {
  readonly format: 'liquidus-trail-bundle'
  readonly version: 1
  readonly exportedAt: string
  readonly programme: { readonly code: string; readonly title: string }
  readonly entries: readonly TrailEntry[]
  readonly gates: readonly BundleGate[]
  /** The trails of the works that gates were signed over, each up to the newest entry that one names. */
  readonly works?: readonly BundleWorks[]
}

/** Marks a bundle for export. */
export const trailBundle = (content: Omit<TrailBundle, 'format' | 'version'>): TrailBundle => ({
  format: 'liquidus-trail-bundle',
  version: 1,
  ...content,
})

/** The seals that a bundle's gates are. */
export const gateSeals = (gates: readonly BundleGate[]): TrailSeal[] =>
  gates.map(({ stage, seq, headHash, merkleRoot }) => ({
    name: `the ${stage} gate`,
    seq,
    headHash,
    merkleRoot,
  }))
