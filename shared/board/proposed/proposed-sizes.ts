import type { Board } from '../board'

/** The size of the board, mm. Which way it travels the files do not say. */
export function proposedSize(
  { outline }: Pick<Board, 'outline'>,
  before: { readonly lengthMm: number | undefined; readonly widthMm: number | undefined },
): { readonly lengthMm: number; readonly widthMm: number } | undefined {
  if (!outline?.closed) return undefined
  const across = toHundredth(outline.box.maxX - outline.box.minX)
  const up = toHundredth(outline.box.maxY - outline.box.minY)
  const turned =
    before.lengthMm !== undefined && Math.abs(before.lengthMm - up) < Math.abs(before.lengthMm - across)
  return turned ? { lengthMm: up, widthMm: across } : { lengthMm: across, widthMm: up }
}

/** The least distance of copper from the edge, mm, never more than it is; undefined where none comes near or no outline is closed. */
export function proposedCopperToEdge({ edges }: Pick<Board, 'edges'>): number | undefined {
  const least = Math.min(...edges.map(({ gapMm }) => gapMm))
  return Number.isFinite(least) && least >= 0 ? Math.floor(least * 1000 + 1e-6) / 1000 : undefined
}

/** Joints on lands without a hole; undefined where no file names a pin of any land, so that they cannot be counted. */
export const proposedSurfaceJoints = ({ joints }: Pick<Board, 'joints'>): number | undefined =>
  joints.some(({ component }) => component !== undefined)
    ? joints.filter(({ on }) => on !== 'hole').length
    : undefined

const toHundredth = (mm: number): number => Math.round(mm * 100) / 100
