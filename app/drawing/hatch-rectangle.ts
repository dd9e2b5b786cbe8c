/**
 * Section lining: lines at 45° across an upright rectangle, as the `d` of a
 * path. Neighbours lie `spacing` apart measured along the x axis. Written out
 * line by line, so that no pattern needs an id.
 */
export function hatchRectangle(x: number, y: number, width: number, height: number, spacing: number): string {
  if (!(spacing > 0)) throw new RangeError('Hatching needs a spacing greater than zero.')
  const right = x + width
  const bottom = y + height
  let path = ''
  for (let foot = x + spacing / 2; foot < right + height; foot += spacing) {
    const from = foot <= right ? [foot, bottom] : [right, bottom - (foot - right)]
    const to = foot - height >= x ? [foot - height, y] : [x, bottom - (foot - x)]
    path += `M${round(from[0]!)} ${round(from[1]!)}L${round(to[0]!)} ${round(to[1]!)}`
  }
  return path
}

const round = (value: number): number => Math.round(value * 100) / 100
