import { guarded } from '@/app/guard/guarded'
import { readsProgramme, type Rights } from '@/app/guard/rights'
import type { BoardReading } from '@/lib/board-files/board-reading'
import { findBoardArchive, readBoard } from '@/lib/queries/board-files'
import type { Board } from '@/shared/board/board'
import type { Point } from '@/shared/board/geometry/solid'
import { layerInk } from '../layer-ink'
import { pictureBox } from '../picture-box'

/** A board that was read, to those who may read the programme. */
const readsBoard: Rights<{ code: string; evidence: string }, BoardReading> = async (person, params) => {
  const read = await readsProgramme(person, params)
  if (!('right' in read)) return read
  const archive = await findBoardArchive(read.right.state.programme.id, params.evidence)
  if (!archive) return { status: 404, message: 'There are no such board files in this programme.' }
  const board = await readBoard(archive, read.right.state.facts)
  return 'reading' in board ? { right: board.reading } : { status: 404, message: board.refused }
}

/** One layer of the board, the bare board, or the holes through it: to be laid over each other. */
export const GET = guarded(readsBoard, ({ right: reading, request }) => {
  const layer = new URL(request.url).searchParams.get('layer') ?? 'board'
  const drawn = drawingOf(layer, reading)
  if (drawn === undefined) return new Response('The board has no such layer.', { status: 404 })
  const { minX, minY, width, height } = pictureBox(reading.board)
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${minX} ${minY} ${width} ${height}">${drawn}</svg>`
  return new Response(svg, {
    headers: {
      'content-type': 'image/svg+xml; charset=utf-8',
      'cache-control': 'private, max-age=3600',
      'x-content-type-options': 'nosniff',
      'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
    },
  })
})

function drawingOf(layer: string, { board, pictures }: BoardReading): string | undefined {
  if (layer === 'board') return boardDrawn(board)
  if (layer === 'holes') return holesDrawn(board)
  const picture = pictures.find(({ code }) => code === layer)
  return picture && `<path d="${picture.path}" ${layerInk(layer)}/>`
}

const ringPath = (points: readonly Point[]): string =>
  `${points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x} ${-y}`).join('')}Z`

function boardDrawn({ outline }: Board): string {
  if (!outline) return ''
  const path = [outline.points, ...outline.cutouts].map(ringPath).join('')
  return `<path d="${path}" fill="#e9dfbf" fill-rule="evenodd" stroke="#211e1a" stroke-width="0.2"/>`
}

function holesDrawn({ holes }: Board): string {
  const paths = holes.map(({ a: [x, y], b, diameterMm }) => {
    const [x2, y2] = b[0] === x && b[1] === y ? [x + 0.0001, y] : b
    return `<path d="M${x} ${-y}L${x2} ${-y2}" stroke-width="${diameterMm}"/>`
  })
  return `<g stroke="#faf8f3" stroke-linecap="round">${paths.join('')}</g>`
}
