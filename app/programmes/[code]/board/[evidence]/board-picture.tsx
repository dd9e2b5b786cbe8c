import { boardPictureAddress } from '@/app/addresses'
import { Section } from '@/app/ui/section'
import type { Board } from '@/shared/board/board'
import { formatQuantity } from '@/shared/quantity/format'
import type { RingPlace } from '@/shared/board/worst-places'
import { pictureBox } from './picture-box'

interface BoardPictureProps {
  code: string
  evidence: string
  board: Board
  rings: readonly RingPlace[]
}

/** Both sides of the board with the narrowest rings marked by their numbers in the table. */
export function BoardPicture(props: BoardPictureProps) {
  return (
    <Section
      id="picture"
      heading="The board"
      lead="Both sides seen from the top. The numbers are those of the narrowest rings below."
    >
      <div className="board-sides">
        <Side {...props} side="top" />
        <Side {...props} side="bottom" />
      </div>
    </Section>
  )
}

/** A mark is this share of the board's greater side. */
const MARK_SHARE = 0.018

function Side({ code, evidence, board, rings, side }: BoardPictureProps & { side: 'top' | 'bottom' }) {
  const { minX, minY, width, height } = pictureBox(board)
  const size = Math.max(width, height) * MARK_SHARE
  const here = rings.map((place, at) => ({ ...place, number: at + 1 })).filter((place) => place.side === side)
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
        {here.map(({ hole: { a }, number }) => (
          <g key={number} className="board-mark">
            <circle cx={a[0]} cy={-a[1]} r={size} strokeWidth={size / 5} />
            <text x={a[0] + 1.3 * size} y={-a[1] - size / 2} fontSize={2.2 * size}>
              {number}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>{title}.</figcaption>
    </figure>
  )
}
