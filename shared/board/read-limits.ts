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
  /** How far from its origin a board may lie, and how large a thing on it may be, mm. */
  reachMm: 10_000,
  apertureMm: 1000,
  /** Primitives of one macro. */
  macroParts: 2000,
  /** Repeats of holes that repeat each other. */
  repeatsDeep: 64,
  /** Kinds of commands that are not known, and characters of one line that numbers are read from. */
  unknownKinds: 200,
  lineLength: 2000,
  /** Places of a netlist. */
  netPoints: 400_000,
  /** Lines of a table, characters of one line and of a name in it, and components placed or listed. */
  tableLines: 200_000,
  tableLine: 20_000,
  nameLength: 120,
  placed: 100_000,
} as const
