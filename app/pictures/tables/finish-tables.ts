import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import {
  LEAD_AGAINST_WHISKERS,
  LEAD_COATINGS,
  WHISKER_MEASURES,
  type LeadCoating,
} from '@/shared/materials/lead-finishes'
import { tinCoatingMin, tinCoatingMax } from '@/shared/plan/limits/finishes'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { governingFor, valueOf } from '../value-of'
import { numbers, rangeText, texts, type ReferenceTable } from './reference-table'

/** Finishes of the board's copper, with their windows and lives. */
export const boardFinishTables = (view: ProgrammeView): ReferenceTable[] => {
  const chosen = valueOf(view, boardFinish)
  const window = tinWindow(view)
  return [
    {
      caption: 'board finishes',
      columns: [
        ...texts('Finish'),
        ...numbers('Thickness, µm', 'Nickel under it, µm', 'Lead, %', 'In a sealed pack, months'),
        ...texts('Remarks'),
      ],
      rows: Object.entries(BOARD_FINISHES).map(([key, finish]) => ({
        chosen: key === chosen,
        source: finish.source,
        cells: boardCells(finish, window),
      })),
    },
  ]
}

const boardCells = (finish: BoardFinish, window: string): string[] => [
  finish.label,
  finish.window
    ? rangeText(finish.window.minUm, finish.window.maxUm)
    : finish.coating === 'tin' || finish.coating === 'tin-lead'
      ? window
      : '–',
  finish.underlayer ? rangeText(finish.underlayer.minUm, undefined) : '–',
  formatNumber(finish.leadPct),
  rangeText(finish.shelfMonths?.min, finish.shelfMonths?.max),
  [
    finish.note,
    finish.hotDipped && 'One solder exposure of the laminate.',
    finish.pureTin && 'Pure tin: may grow whiskers.',
  ]
    .filter(Boolean)
    .join(' ') || '–',
]

/** Coatings of leads, and what helps against whiskers. */
export const leadFinishTables = (view: ProgrammeView): ReferenceTable[] => {
  const used = new Set((valueOf(view, leadFinishes) ?? []).map(({ coating }) => coating as string))
  const window = tinWindow(view)
  return [
    {
      caption: 'lead coatings',
      columns: [
        ...texts('Coating'),
        ...numbers('Thickness, µm', 'Tin, %', 'Lead, %', 'Bismuth, %'),
        ...texts('Whiskers', 'Remarks'),
      ],
      rows: Object.entries(LEAD_COATINGS).map(([key, coating]) => ({
        chosen: used.has(key),
        source: coating.source,
        cells: leadCells(coating, window),
      })),
    },
    whiskerMeasures,
  ]
}

const WHISKERS = {
  bright: 'most prone (bright tin)',
  matte: 'prone (pure tin)',
  no: 'not by itself',
} as const satisfies Record<LeadCoating['whiskers'], string>

const leadCells = (coating: LeadCoating, window: string): string[] => [
  coating.label,
  coating.tinWindow ? window : '–',
  formatNumber(coating.tinPct),
  formatNumber(coating.leadPct),
  formatNumber(coating.bismuthPct),
  WHISKERS[coating.whiskers],
  coating.note ?? '–',
]

const whiskerMeasures: ReferenceTable = {
  caption: 'measures against whiskers',
  note: 'Measures lessen whiskers; none but lead is known to prevent them.',
  columns: texts('Measure', 'How much'),
  rows: [
    {
      cells: ['Lead in the tin', `at least ${formatQuantity(LEAD_AGAINST_WHISKERS.minPct, '%')}`],
      source: LEAD_AGAINST_WHISKERS.source,
    },
    {
      cells: [
        'Nickel under the tin',
        `at least ${formatQuantity(WHISKER_MEASURES.nickelUnderlayerUm.value, 'µm')}`,
      ],
      source: WHISKER_MEASURES.nickelUnderlayerUm.source,
    },
    {
      cells: [
        'Thick matte tin without nickel',
        `at least ${formatQuantity(WHISKER_MEASURES.matteThicknessUm.value, 'µm')}`,
      ],
      source: WHISKER_MEASURES.matteThicknessUm.source,
    },
    { cells: ['Annealing', WHISKER_MEASURES.anneal.message], source: WHISKER_MEASURES.anneal.source },
  ],
}

/** The window of tin and tin-lead in force for the programme. */
const tinWindow = (view: ProgrammeView): string =>
  rangeText(governingFor(view, tinCoatingMin).value, governingFor(view, tinCoatingMax).value)
