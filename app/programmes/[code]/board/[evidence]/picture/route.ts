import { guarded } from '@/app/guard/guarded'
import { readsProgramme, type Rights } from '@/app/guard/rights'
import type { BoardReading } from '@/lib/board-files/board-reading'
import { findBoardArchive, readBoard } from '@/lib/queries/board-files'
import { pictureBox } from '../picture-box'

/** A board that was read, to those who may read the programme. */
const readsBoard: Rights<{ code: string; evidence: string }, BoardReading> = async (person, params) => {
  const read = await readsProgramme(person, params)
  if (!('right' in read)) return read
  const archive = await findBoardArchive(read.right.state.programme.id, params.evidence)
  if (!archive) return { status: 404, message: 'There are no such board files in this programme.' }
  const board = await readBoard(archive)
  return 'reading' in board ? { right: board.reading } : { status: 404, message: board.refused }
}

/** One side of the board: its copper, and the holes through it. */
export const GET = guarded(readsBoard, ({ right: { board, pictures }, request }) => {
  const side = new URL(request.url).searchParams.get('side') === 'bottom' ? 'bottom' : 'top'
  const { minX, minY, width, height } = pictureBox(board)
  const holes = board.holes
    .map(({ a: [x, y], b, diameterMm }) => {
      const [x2, y2] = b[0] === x && b[1] === y ? [x + 0.0001, y] : b
      return `<path d="M${x} ${-y}L${x2} ${-y2}" stroke-width="${diameterMm}"/>`
    })
    .join('')
  const outline =
    board.outline?.points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x} ${-y}`).join('') ?? ''
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${minX} ${minY} ${width} ${height}"><path d="${outline}" fill="#e9dfbf" stroke="#211e1a" stroke-width="0.2"/><path d="${pictures[side]}" fill="#b05f28"/><g stroke="#faf8f3" stroke-linecap="round">${holes}</g></svg>`
  return new Response(svg, {
    headers: {
      'content-type': 'image/svg+xml; charset=utf-8',
      'cache-control': 'private, max-age=3600',
      'x-content-type-options': 'nosniff',
      'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
    },
  })
})
