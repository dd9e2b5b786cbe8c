import type { BoardReading } from '@/lib/board-files/board-reading'
import type { Board } from '@/shared/board/board'
import { gapsAlike, holesAlike, ringsAlike, turnedAlike, type Alike } from '@/shared/board/compared/alike'
import {
  compareBoards,
  laidOn,
  type BoardDifferences,
  type GapDifference,
  type RingDifference,
} from '@/shared/board/compared/compare-boards'
import type { HoleDifference } from '@/shared/board/compared/compare-holes'
import { turnedFindings, type TurnedFinding, type TurnedPlace } from '@/shared/board/compared/turned-findings'
import { boardFindings } from '@/shared/board/judged/board-findings'
import type { Facts } from '@/shared/rules/facts'
import type { BoardMark } from '../../board-sides'
import { placeName } from '../../place-name'

/** The letters of what changed, in tables and picture. */
export const LETTERS = { holes: 'H', rings: 'K', gaps: 'L', turned: 'V' } as const

/** A later board beside an earlier one, as its page shows it. */
export interface Comparison {
  readonly board: Board
  readonly layers: readonly string[]
  readonly differences: BoardDifferences
  readonly turned: readonly TurnedFinding[]
  readonly alike: {
    readonly turned: readonly Alike<TurnedPlace>[]
    readonly holes: readonly Alike<HoleDifference>[]
    readonly rings: readonly Alike<RingDifference>[]
    readonly gaps: readonly Alike<GapDifference>[]
  }
}

/** What changed from an earlier board to a later one, and what is judged otherwise by today's specification. */
export function comparison(earlier: Board, { board, pictures }: BoardReading, facts: Facts): Comparison {
  const { board: before, shift } = laidOn(earlier, board)
  const turned = turnedFindings(boardFindings(before, facts), boardFindings(board, facts))
  const differences = compareBoards(before, board, shift)
  return {
    board,
    layers: pictures.map(({ code }) => code),
    differences,
    turned,
    alike: {
      turned: turnedAlike(turned),
      holes: holesAlike(differences.holes),
      rings: ringsAlike(differences.rings),
      gaps: gapsAlike(differences.gaps),
    },
  }
}

/** All that changed alike bears one name, which stands at the first of them and leads there. */
export function marksOf({ alike: { holes, rings, gaps, turned } }: Comparison): BoardMark[] {
  return [
    ...marked(LETTERS.rings, firstOf(rings), ({ layer }) => ({ layer, drawn: 'followed' })),
    ...marked(LETTERS.gaps, firstOf(gaps), ({ layer }) => ({ layer, drawn: 'followed' })),
    ...marked(LETTERS.turned, turned, ({ layer }) => ({ layer })),
    ...marked(LETTERS.holes, holes, ({ kind }) => ({
      layer: 'top',
      ...(kind === 'gone' && { drawn: 'broken' as const }),
    })),
  ]
}

const firstOf = <T>(groups: readonly Alike<T>[]): Alike<T>[] => groups.map(([first]) => [first])

const marked = <T extends { at: BoardMark['at'] }>(
  letter: string,
  groups: readonly Alike<T>[],
  markOf: (thing: T) => Pick<BoardMark, 'layer' | 'drawn'>,
): BoardMark[] =>
  groups.flatMap((group, at) =>
    group.map((thing, place) => ({
      name: placeName(letter, at),
      at: thing.at,
      ...(place > 0 && { unnamed: true }),
      ...markOf(thing),
    })),
  )
