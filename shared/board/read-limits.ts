/** Beyond these a file is refused rather than read on without end. */
export const READ_LIMITS = {
  /** Objects that one layer may come to, once repeats and blocks are drawn. */
  objects: 2_000_000,
  /** Apertures of one file, and of blocks how deep one may lie in another. */
  apertures: 20_000,
  blockDepth: 8,
  /** Points of one outline, region or macro. */
  points: 500_000,
  holes: 200_000,
  /** Places of a netlist. */
  netPoints: 400_000,
} as const
