import { Section } from '@/app/ui/section'
import type { Board } from '@/shared/board/board'
import type { BoardFinding } from '@/shared/board/judged/board-findings'
import { BoardSides, type BoardMark } from './board-sides'
import { placeName } from './place-name'

interface BoardPictureProps {
  code: string
  evidence: string
  board: Board
  layers: readonly string[]
  findings: readonly BoardFinding[]
}

/** Both sides of the board with the places that do not meet, by their names in the tables. */
export function BoardPicture({ findings, ...board }: BoardPictureProps) {
  return (
    <Section
      id="picture"
      heading="The board"
      lead="Both sides seen from the top. Places that do not meet are marked by their names in the tables below; one that meets is shown when its name is followed."
    >
      <BoardSides {...board} marks={findings.flatMap(marksOf)} />
    </Section>
  )
}

const marksOf = ({ letter, places }: BoardFinding): BoardMark[] =>
  places.map(({ at, layer, verdict }, rank) => ({
    name: placeName(letter, rank),
    at,
    layer,
    ...(verdict === 'meets' && { drawn: 'followed' }),
  }))
