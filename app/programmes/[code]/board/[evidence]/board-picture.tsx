import { boardPictureAddress } from '@/app/addresses'
import { Section } from '@/app/ui/section'
import type { Board } from '@/shared/board/board'
import type { BoardFinding } from '@/shared/board/judged/board-findings'
import type { PlacedPart } from '@/shared/board/judged/placed-part'
import { formatQuantity } from '@/shared/quantity/format'
import { markId, placeName } from './judged-board'
import { pictureBox } from './picture-box'

interface BoardPictureProps {
  code: string
  evidence: string
  board: Board
  findings: readonly BoardFinding[]
}

/** Both sides of the board with the places that do not meet, by their names in the tables. */
export function BoardPicture(props: BoardPictureProps) {
  return (
    <Section
      id="picture"
      heading="The board"
      lead="Both sides seen from the top. Places that do not meet are marked by their names in the tables below; one that meets is shown when its name is followed."
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

interface Mark {
  readonly name: string
  readonly place: PlacedPart
}

/** Inner layers are seen from the top. */
const marksOn = (side: 'top' | 'bottom', findings: readonly BoardFinding[]): Mark[] =>
  findings
    .flatMap(({ letter, places }) => places.map((place, at) => ({ place, name: placeName(letter, at) })))
    .filter(({ place: { layer } }) => (layer === 'bottom') === (side === 'bottom'))

function Side({ code, evidence, board, findings, side }: BoardPictureProps & { side: 'top' | 'bottom' }) {
  const { minX, minY, width, height } = pictureBox(board)
  const size = Math.max(width, height) * MARK_SHARE
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
        {marksOn(side, findings).map(({ name, place: { at, verdict } }) => (
          <g key={name} id={markId(name)} className={verdict === 'meets' ? 'board-mark meets' : 'board-mark'}>
            <circle cx={at[0]} cy={-at[1]} r={size} strokeWidth={size / 5} />
            <text x={at[0] + 1.3 * size} y={-at[1] - size / 2} fontSize={2.2 * size}>
              {name}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>{title}.</figcaption>
    </figure>
  )
}
