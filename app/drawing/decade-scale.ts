/** A span of whole decades around the values above zero. */
export function decadesAround(values: readonly number[]): [number, number] {
  const real = values.filter((value) => value > 0 && Number.isFinite(value))
  if (real.length === 0) return [1, 10]
  const low = 10 ** Math.floor(Math.log10(Math.min(...real)) - 1e-9)
  const high = 10 ** Math.ceil(Math.log10(Math.max(...real)) + 1e-9)
  return [low, high > low ? high : low * 10]
}
