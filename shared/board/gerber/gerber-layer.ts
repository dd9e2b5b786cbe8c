import type { Solid } from '../geometry/solid'

/** What the file says of one object, by its attributes (specification 5): empty where it says nothing. */
export interface ObjectAttributes {
  /** `.N`: the net. */
  readonly net?: string
  /** `.C` or `.P`: the component's reference designator. */
  readonly component?: string
  /** `.P`: the pin. */
  readonly pin?: string
  /** `.AperFunction`, with its fields. */
  readonly use?: readonly string[]
}

/** One thing drawn on a layer. */
export interface Drawn {
  readonly solid: Solid
  readonly dark: boolean
  readonly by: 'flash' | 'stroke' | 'region'
  /** Which aperture drew it; absent in regions. */
  readonly aperture?: number
  readonly attributes: ObjectAttributes
}

/** Something in a file that was passed over, how often, and where first. */
export interface Passed {
  readonly what: string
  readonly times: number
  readonly line: number
}

export interface GerberLayer {
  readonly unit: 'mm' | 'inch'
  readonly drawn: readonly Drawn[]
  /** `.FileFunction`, `.FilePolarity` and the like, by name without the dot. */
  readonly attributes: ReadonlyMap<string, readonly string[]>
  readonly passed: readonly Passed[]
}
