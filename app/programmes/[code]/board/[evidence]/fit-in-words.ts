import type { Point } from '@/shared/board/geometry/solid'
import type { PlacementFit } from '@/shared/board/placement/fit-placement'
import type { PlacementMove } from '@/shared/board/placement/placement-move'
import { capitalised } from '@/shared/quantity/capitalised'
import { formatQuantity } from '@/shared/quantity/format'

const AGAINST = {
  pins: 'within the pins of their components',
  outline: 'within the outline',
  nothing: '',
} as const

/** How a placement file lies on the board, and what becomes of it. */
export function fitInWords({ unit, unitBy, against, compared, met, liesOn, move }: PlacementFit): string {
  const unitSaid =
    unitBy === 'fit' && unit
      ? `Unit not said: ${unit} by its fit on the board, to be confirmed. `
      : unit
        ? ''
        : 'Unit not said, and the board does not tell it: choose it. '
  if (against === 'nothing')
    return `${unitSaid}Neither a pin of its components nor a closed outline to hold its centres against: nothing of it is used.`
  const centres = `${met} of ${compared} centres lie ${AGAINST[against]}`
  if (liesOn)
    return `${unitSaid}${move ? `Moved onto the board, as was confirmed: ${moveInWords(move)}. As written ${centres}.` : `${centres}.`}`
  const would = move ? ` ${capitalised(moveInWords(move))} it would: choose so if that is right.` : ''
  return `${unitSaid}It does not lie on the board: ${centres}. Nothing of it is used.${would}`
}

function moveInWords({ bottomMirrored, top, bottom }: PlacementMove): string {
  const alike = top[0] === bottom[0] && top[1] === bottom[1]
  if (!bottomMirrored) return `by ${byInWords(top)}`
  return alike
    ? `with the bottom seen from below, by ${byInWords(top)}`
    : `with the bottom seen from below, the top by ${byInWords(top)}, the bottom by ${byInWords(bottom)}`
}

const byInWords = ([x, y]: Point): string => `${mm(x)} in x and ${mm(y)} in y`
const mm = (value: number): string => formatQuantity(Math.round(value * 1000) / 1000, 'mm', 6)
