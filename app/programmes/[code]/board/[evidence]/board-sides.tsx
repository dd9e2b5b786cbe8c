import { boardPictureAddress } from '@/app/addresses'
import type { BoardArchive } from '@/lib/queries/board-files'
import type { Board } from '@/shared/board/board'
import type { Point } from '@/shared/board/geometry/solid'
import { roleFrom, roleLabel } from '@/shared/board/role-code'
import { formatQuantity } from '@/shared/quantity/format'
import { BoardView, type ViewLayer } from './board-view'
import { MARGIN_MM, pictureBox } from './picture-box'
import { markId } from './place-name'

/** A place marked in a picture of a board. */
export interface BoardMark {
  readonly name: string
  readonly at: Point
  /** Inner layers are seen from the top. */
  readonly layer: string
  /** One of several that share a name is only drawn round. */
  readonly unnamed?: boolean
  /** Shown only when its name is followed, or drawn broken for what is there no more. */
  readonly drawn?: 'followed' | 'broken'
}

interface BoardSidesProps {
  code: string
  archive: BoardArchive
  board: Board
  /** Codes of the layers that have a picture. */
  layers: readonly string[]
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

const MARK_CLASS = {
  always: 'board-mark',
  followed: 'board-mark board-mark-followed',
  broken: 'board-mark board-mark-broken',
} as const

function Side({ code, archive, board, layers, marks, side }: BoardSidesProps & { side: 'top' | 'bottom' }) {
  const whole = pictureBox(board)
  const size = [whole.width, whole.height]
    .map((mm) => formatQuantity(mm - 2 * MARGIN_MM, 'mm', 4))
    .join(' by ')
  return (
    <BoardView
      title={`${side === 'top' ? 'Top' : 'Bottom'} copper and holes, ${size}`}
      whole={whole}
      layers={layersOf(layers, side).map((layer) => ({
        ...layer,
        href: boardPictureAddress(code, archive.evidence, layer.code, archive.confirmed?.at.getTime() ?? 0),
      }))}
      marks={marks
        .filter(({ layer }) => (layer === 'bottom') === (side === 'bottom'))
        .map(({ name, at: [x, y], drawn, unnamed = false }) => ({
          ...(!unnamed && { name, id: markId(name) }),
          x,
          y: -y,
          className: MARK_CLASS[drawn ?? 'always'],
        }))}
    />
  )
}

/** The bare board lowest, then copper with this side's uppermost, what lies over copper, and the holes through all. */
function layersOf(codes: readonly string[], side: 'top' | 'bottom'): Omit<ViewLayer, 'href'>[] {
  const own = `copper-${side}`
  const copper = codes.filter((code) => code.startsWith('copper') && code !== own)
  const over = codes.filter((code) => !code.startsWith('copper'))
  return [
    { code: 'board', label: 'Bare board', shown: true },
    ...[...copper, ...codes.filter((code) => code === own), ...over].map((code) => ({
      code,
      label: labelOf(code),
      shown: code === own,
    })),
    { code: 'holes', label: 'Holes', shown: true },
  ]
}

function labelOf(code: string): string {
  const role = roleFrom(code)
  return role ? roleLabel(role) : code
}
