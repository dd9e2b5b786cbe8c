import { Section } from '@/app/ui/section'
import type { BoardArchive } from '@/lib/queries/board-files'
import type { Board } from '@/shared/board/board'
import type { BoardFinding } from '@/shared/board/judged/board-findings'
import type { Verdict } from '@/shared/rules/finding'
import { BoardSides, type BoardMark } from './board-sides'
import { placeName } from './place-name'

interface BoardPictureProps {
  code: string
  archive: BoardArchive
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
      lead="Both sides seen from the top. Places that fail or are marginal are marked by their names in the tables below; any other is shown when its name is followed."
    >
      <BoardSides {...board} marks={findings.flatMap(marksOf)} />
    </Section>
  )
}

/** What is marked from the start: what is undetermined is so all over the board. */
const STANDS_OUT: Readonly<Record<Verdict, boolean>> = {
  fails: true,
  marginal: true,
  undetermined: false,
  meets: false,
  'not applicable': false,
}

const marksOf = ({ letter, places }: BoardFinding): BoardMark[] =>
  places.map(({ at, layer, verdict }, rank) => ({
    name: placeName(letter, rank),
    at,
    layer,
    ...(!STANDS_OUT[verdict] && { drawn: 'followed' }),
  }))
