/** Land of a hole on one layer: what was drawn for it, and how much copper stands round the hole. */
export interface Land {
  readonly by: 'flash' | 'stroke' | 'region'
  /** Least and greatest extent of what was drawn, mm. */
  readonly widthMm: number
  readonly lengthMm: number
  /** Least distance from the hole's wall to the edge of the land, mm; below 0 where the hole breaks out. */
  readonly ringMm: number
}

export type HoleKind = 'component' | 'via' | 'mounting'

/** One hole of the board; a slot from `a` to `b`. Lengths in mm. */
export interface BoardHole {
  readonly a: readonly [x: number, y: number]
  readonly b: readonly [x: number, y: number]
  readonly diameterMm: number
  readonly plated: boolean | undefined
  readonly kind: HoleKind
  /** How the kind is known: a file says it of the hole or the land, the mask is open there, or only by size. */
  readonly kindBy: 'drill file' | 'land' | 'netlist' | 'mask' | 'plating' | 'size'
  readonly top: Land | undefined
  readonly bottom: Land | undefined
  readonly inner: readonly { readonly layer: number; readonly land: Land }[]
  readonly net?: string
  readonly component?: string
  readonly pin?: string
}
