/** The part of a board's picture that is seen, in mm with y downwards. */
export interface ViewBox {
  readonly minX: number
  readonly minY: number
  readonly width: number
  readonly height: number
}

/** Closer than this share of the board nothing is to be seen that the files hold. */
const CLOSEST = 1 / 64
/** How much closer one step leads, and how far one step beside. */
export const STEP = 1.5
const BESIDE = 0.2
/** A place that is followed is shown with so much of the board around it. */
const AROUND = 1 / 8

/** Closer by a factor, or further off below 1, with one place staying where it is; never further than the whole. */
export function zoomed(
  view: ViewBox,
  whole: ViewBox,
  factor: number,
  [x, y]: readonly [number, number],
): ViewBox {
  const width = Math.min(whole.width, Math.max(whole.width * CLOSEST, view.width / factor))
  const share = width / view.width
  return kept(
    {
      minX: x - (x - view.minX) * share,
      minY: y - (y - view.minY) * share,
      width,
      height: view.height * share,
    },
    whole,
  )
}

/** Beside by shares of what is seen, no further than the board goes. */
export const moved = (view: ViewBox, whole: ViewBox, [right, down]: readonly [number, number]): ViewBox =>
  kept({ ...view, minX: view.minX + right * view.width, minY: view.minY + down * view.height }, whole)

/** A place in the middle, with the board around it. */
export function around(whole: ViewBox, [x, y]: readonly [number, number]): ViewBox {
  const [width, height] = [whole.width * AROUND, whole.height * AROUND]
  return kept({ minX: x - width / 2, minY: y - height / 2, width, height }, whole)
}

export const middleOf = ({ minX, minY, width, height }: ViewBox): readonly [number, number] => [
  minX + width / 2,
  minY + height / 2,
]

function kept(view: ViewBox, whole: ViewBox): ViewBox {
  const within = (value: number, least: number, room: number): number =>
    Math.min(least + Math.max(0, room), Math.max(least, value))
  return {
    ...view,
    minX: within(view.minX, whole.minX, whole.width - view.width),
    minY: within(view.minY, whole.minY, whole.height - view.height),
  }
}

/** What a key does to the view; undefined where it does nothing. */
export function afterKey(key: string, view: ViewBox, whole: ViewBox): ViewBox | undefined {
  switch (key) {
    case '+':
    case '=':
      return zoomed(view, whole, STEP, middleOf(view))
    case '-':
      return zoomed(view, whole, 1 / STEP, middleOf(view))
    case '0':
      return whole
    case 'ArrowLeft':
      return moved(view, whole, [-BESIDE, 0])
    case 'ArrowRight':
      return moved(view, whole, [BESIDE, 0])
    case 'ArrowUp':
      return moved(view, whole, [0, -BESIDE])
    case 'ArrowDown':
      return moved(view, whole, [0, BESIDE])
    default:
      return undefined
  }
}
