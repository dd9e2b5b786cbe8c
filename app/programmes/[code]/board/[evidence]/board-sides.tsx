import { boardPictureAddress } from '@/app/addresses'
import type { Board } from '@/shared/board/board'
import type { Point } from '@/shared/board/geometry/solid'
import { formatQuantity } from '@/shared/quantity/format'
import { markId } from './place-name'
import { pictureBox } from './picture-box'

/** A place marked in a picture of a board. */
export interface BoardMark {
  readonly name: string
  readonly at: Point
  /** Inner layers are seen from the top. */
  readonly layer: string
  /** Shown only when its name is followed, or drawn broken for what is there no more. */
  readonly drawn?: 'followed' | 'broken'
}

interface BoardSidesProps {
  code: string
  evidence: string
  board: Board
  marks: readonly BoardMark[]
}

/** Both sides of a board seen from the top, with places marked by their names. */
export function BoardSides(props: BoardSidesProps) {
  return (
    <div className="board-sides">
      <Side {...props} side="top" />
      <Side {...props} side="bottom" />
    </div>
  )
}

/** A mark is this share of the board's greater side. */
const MARK_SHARE = 0.018

const MARK_CLASS = {
  always: 'board-mark',
  followed: 'board-mark board-mark-followed',
  broken: 'board-mark board-mark-broken',
} as const

function Side({ code, evidence, board, marks, side }: BoardSidesProps & { side: 'top' | 'bottom' }) {
  const { minX, minY, width, height } = pictureBox(board)
  const size = Math.max(width, height) * MARK_SHARE
  const here = marks.filter(({ layer }) => (layer === 'bottom') === (side === 'bottom'))
  const title = `${side === 'top' ? 'Top' : 'Bottom'} copper and holes, ${formatQuantity(width - 2, 'mm', 4)} by ${formatQuantity(height - 2, 'mm', 4)}`
  return (
    <figure className="board-side">
      <svg viewBox={`${minX} ${minY} ${width} ${height}`} role="img" aria-label={title}>
        <image
          href={boardPictureAddress(code, evidence, side)}
          x={minX}
          y={minY}
          width={width}
          height={height}
        />
        {here.map(({ name, at: [x, y], drawn }) => (
          <g key={name} id={markId(name)} className={MARK_CLASS[drawn ?? 'always']}>
            <circle cx={x} cy={-y} r={size} strokeWidth={size / 5} />
            <text x={x + 1.3 * size} y={-y - size / 2} fontSize={2.2 * size}>
              {name}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>{title}.</figcaption>
    </figure>
  )
}
