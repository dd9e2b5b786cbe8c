/** Serial numbers as on the assemblies' labels. */
export const serials = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, index) => `LX41-${String(from + index).padStart(4, '0')}`)
