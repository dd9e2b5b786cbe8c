import { boardFindings, type BoardFinding } from '@/shared/board/judged/board-findings'
import type { Board } from '@/shared/board/board'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import {
  barrelPlating,
  landEdition,
  leadHoles,
  producibilityLevel,
} from '@/shared/plan/parameters/lead-holes'
import { spacings } from '@/shared/plan/parameters/spacings'
import { factsWith, set, type FactsInput, type SetValue } from '../facts-builder'
import { leadHole } from '../specification/lead-hole-rows'
import { spacing } from '../specification/spacing-rows'
import type { DrawnBoard } from './drawn-board'

/** A board with something to be found in each matter, worked out by hand beside the checks. */
const OUTER = ['top', 'bottom'] as const
export const JUDGED_BOARD: DrawnBoard = {
  lands: [
    { on: OUTER, at: [10, 10], size: 1.9, bare: true, net: 'VIN', pin: ['X1', '1'] },
    { on: ['inner 2'], at: [10, 10], size: 1.6 },
    { on: OUTER, at: [12.3, 10], size: 1.9, bare: true, net: 'GND', pin: ['X1', '2'] },
    { on: OUTER, at: [20, 10], size: 1.5, bare: true, net: 'SENSE', pin: ['X2', '1'] },
    { on: ['top'], at: [20, 20], size: [1.9, 2.4], bare: true, net: 'OUT', pin: ['X2', '2'] },
    { on: ['bottom'], at: [20.1, 20], size: 1.9, bare: true, net: 'OUT', pin: ['X2', '2'] },
    { on: OUTER, at: [30, 20], size: 0.7, net: 'SENSE' },
  ],
  lines: [
    { on: 'bottom', from: [33, 2], to: [33, 12], width: 0.3 },
    { on: 'top', from: [5, 0.6], to: [25, 0.6], width: 0.3 },
    { on: 'top', from: [24.2, 14], to: [24.2, 17], width: 0.4 },
    { on: 'top', from: [20, 8], to: [24, 8], width: 0.2 },
    { on: 'top', from: [20.4, 7.6], to: [24, 7.6], width: 0.2 },
  ],
  holes: [
    { at: [10, 10], mm: 1.15, plated: true },
    { at: [12.3, 10], mm: 1.15, plated: true },
    { at: [20, 10], mm: 1.15, plated: true },
    { at: [20, 20], mm: 1.15, plated: true },
    { at: [30, 20], mm: 0.3, plated: true },
    { at: [35, 5], mm: 3, plated: false },
  ],
  outline: [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ],
  cutouts: [
    [
      [25, 14],
      [28, 14],
      [28, 17],
      [25, 17],
    ],
  ],
}

export const SPECIFIED: readonly SetValue[] = [
  set(leadHoles, [leadHole()]),
  set(barrelPlating, 25),
  set(producibilityLevel, 'B'),
  set(landEdition, 'ipc-2221'),
  set(boardThickness, 1.6),
  set(spacings, [spacing({ gapMm: 0.25 }), spacing({ between: 'VIN to GND', gapMm: 0.5 })]),
]

export const judged = (
  board: Board,
  values: readonly SetValue[] = SPECIFIED,
  more: FactsInput = {},
): ReadonlyMap<string, BoardFinding> =>
  new Map(boardFindings(board, factsWith({ ...more, values })).map((each) => [each.key, each]))
