/** Shapes that stay apart in black and white, in the order they are handed out. */
export const POINT_SHAPES = [
  'ring',
  'cross',
  'triangle',
  'square',
  'diamond',
  'plus',
  'bar',
  'hourglass',
] as const
export type PointShape = (typeof POINT_SHAPES)[number]

/** The shape for the so-manyth kind; they repeat after the eighth. */
export const shapeFor = (position: number): PointShape => POINT_SHAPES[position % POINT_SHAPES.length]!

/** A shape of so much reach around its centre, as the `d` of a stroked path. */
export function pointShape(shape: PointShape, centreX: number, centreY: number, reach = 4): string {
  const [x, y, r] = [tenth(centreX), tenth(centreY), tenth(reach)]
  switch (shape) {
    case 'ring':
      return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`
    case 'cross':
      return `M${x - r} ${y - r}l${2 * r} ${2 * r}M${x - r} ${y + r}l${2 * r} ${-2 * r}`
    case 'triangle':
      return `M${x} ${y - 1.2 * r}L${x + 1.1 * r} ${y + 0.8 * r}H${x - 1.1 * r}Z`
    case 'square':
      return `M${x - 0.9 * r} ${y - 0.9 * r}h${1.8 * r}v${1.8 * r}h${-1.8 * r}Z`
    case 'diamond':
      return `M${x} ${y - 1.25 * r}L${x + 1.25 * r} ${y}L${x} ${y + 1.25 * r}L${x - 1.25 * r} ${y}Z`
    case 'plus':
      return `M${x - 1.2 * r} ${y}h${2.4 * r}M${x} ${y - 1.2 * r}v${2.4 * r}`
    case 'bar':
      return `M${x - 1.2 * r} ${y - 0.45 * r}h${2.4 * r}v${0.9 * r}h${-2.4 * r}Z`
    case 'hourglass':
      return `M${x - r} ${y - r}h${2 * r}L${x - r} ${y + r}h${2 * r}Z`
  }
}

/** To a tenth of a unit: finer is not seen, and a long plot is half the size. */
const tenth = (value: number): number => Math.round(value * 10) / 10
