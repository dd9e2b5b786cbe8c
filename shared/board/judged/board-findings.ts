import type { Facts } from '@/shared/rules/facts'
import { undetermined, type Finding } from '@/shared/rules/finding'
import { judge, type AnyRule } from '@/shared/rules/rule'
import type { Board } from '../board'
import { aspectOnBoard } from './aspect-on-board'
import { bareGapsOnBoard } from './bare-gaps-on-board'
import { bridgingOnBoard } from './bridging-on-board'
import { conductorsOnBoard } from './conductors-on-board'
import { dropsOnBoard } from './drops-on-board'
import { edgesOnBoard, wallsOnBoard } from './edges-on-board'
import { gapsOnBoard, unjudgedGaps } from './gaps-on-board'
import { gridOnBoard } from './grid-on-board'
import { maskWebsOnBoard } from './mask-webs-on-board'
import { netlistOnBoard } from './netlist-on-board'
import { worstPlaces, type PlacedPart } from './placed-part'
import { reliefOnBoard } from './relief-on-board'
import { ringsOnBoard, unjudgedRings } from './rings-on-board'
import { voltagesOnBoard } from './voltages-on-board'

/** One thing judged on a board as its files have it, with the places that decide. */
export interface BoardFinding {
  readonly key: string
  /** The letter of its places in the picture. */
  readonly letter: string
  readonly title: string
  readonly why: string
  readonly finding: Finding
  /** The worst first. */
  readonly places: readonly PlacedPart[]
}

interface JudgedOnBoard {
  readonly letter: string
  readonly of: (board: Board) => AnyRule
  /** Whether it is of copper, so that files without any leave it open. */
  readonly ofCopper: boolean
  /** What is led to where the specification has nothing to judge it by. */
  readonly unjudged?: (board: Board) => readonly PlacedPart[]
}

/** What is judged on every board, each with its letter. */
const JUDGED: readonly JudgedOnBoard[] = [
  { letter: 'R', ofCopper: true, of: ringsOnBoard, unjudged: unjudgedRings },
  { letter: 'G', ofCopper: true, of: gapsOnBoard, unjudged: unjudgedGaps },
  { letter: 'V', ofCopper: true, of: voltagesOnBoard },
  { letter: 'C', ofCopper: true, of: conductorsOnBoard },
  { letter: 'D', ofCopper: true, of: dropsOnBoard },
  { letter: 'B', ofCopper: true, of: bareGapsOnBoard },
  { letter: 'W', ofCopper: true, of: bridgingOnBoard },
  { letter: 'M', ofCopper: false, of: maskWebsOnBoard },
  { letter: 'H', ofCopper: true, of: reliefOnBoard },
  { letter: 'E', ofCopper: true, of: edgesOnBoard },
  { letter: 'U', ofCopper: true, of: wallsOnBoard },
  { letter: 'T', ofCopper: false, of: aspectOnBoard },
  { letter: 'O', ofCopper: false, of: gridOnBoard },
]

const NETLIST = 'N'

/** What is judged on every board, as rules of that board. */
export const rulesOnBoard = (board: Board): AnyRule[] => JUDGED.map(({ of }) => of(board))

/** Judges a board by what its programme specifies. Nothing of it is stored: it follows from the files and the facts. */
export function boardFindings(board: Board, facts: Facts): BoardFinding[] {
  const { netlist } = board
  const judged: readonly JudgedOnBoard[] = netlist
    ? [...JUDGED, { letter: NETLIST, ofCopper: true, of: () => netlistOnBoard(netlist) }]
    : JUDGED
  return judged.map(({ letter, of, ofCopper, unjudged }) => {
    const rule = of(board)
    const finding = judge(ofCopper && board.layers.length === 0 ? withoutCopper(rule) : rule, facts)
    const parts = finding.parts ?? unjudged?.(board) ?? []
    return { key: rule.id, letter, title: rule.title, why: rule.why, finding, places: worstPlaces(parts) }
  })
}

const withoutCopper = (rule: AnyRule): AnyRule => ({
  ...rule,
  reads: {},
  judge: () =>
    undetermined('No file is taken for a layer of copper.', ['A layer of copper among the board files']),
})
