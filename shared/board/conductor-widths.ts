import { groupedBy } from '@/shared/grouped-by'
import type { Layer } from './stack'

/** Lines of one width on one layer. */
export interface ConductorWidth {
  readonly layer: string
  readonly widthMm: number
  readonly lengthMm: number
  readonly times: number
}

/** The widths of all lines of a layer, the narrowest first. */
export function conductorsOf({ name, copper }: Layer): ConductorWidth[] {
  const strokes = copper.copper.flatMap(({ by, solid }) =>
    by === 'stroke' && solid.kind === 'capsule'
      ? [
          {
            widthMm: Math.round(2000 * solid.radius) / 1000,
            lengthMm: Math.hypot(solid.b[0] - solid.a[0], solid.b[1] - solid.a[1]),
          },
        ]
      : [],
  )
  return [...groupedBy(strokes, ({ widthMm }) => widthMm)]
    .map(([widthMm, lines]) => ({
      layer: name,
      widthMm,
      lengthMm: lines.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
      times: lines.length,
    }))
    .sort((one, other) => one.widthMm - other.widthMm)
}
