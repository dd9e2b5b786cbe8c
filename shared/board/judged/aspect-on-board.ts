import { groupedBy } from '@/shared/grouped-by'
import { aspectRatioMax } from '@/shared/plan/limits/lead-holes'
import { aspectRatioGuard } from '@/shared/plan/limits/specification-guards'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { decidingPart, judgedByParts, partOn } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import type { BoardHole } from '../hole'
import { middleOf } from '../joined-copper'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'
import { rowsOfSize } from './rows-for-hole'

/** Every size of plated hole against the thickness of the board, vias too. */
export const aspectOnBoard = ({ holes }: Board) =>
  rule({
    id: 'aspect-on-board',
    title: 'The board’s plated holes against its thickness',
    why: 'The narrowest hole of a board is often a via that no table of leads lists, and its barrel cracks first.',
    formula: 'board thickness/drilled hole of each size, at most the ratio',
    stage: 'specification',
    version: 1,
    reads: {
      boardMm: boardThickness,
      barrelUm: barrelPlating,
      rows: optional(leadHoles),
      max: aspectRatioMax,
      guard: aspectRatioGuard,
    },
    judge({ boardMm, barrelUm, rows = [], max, guard }) {
      const plated = holes.filter((hole) => hole.plated ?? hole.kind !== 'mounting')
      if (plated.length === 0) return notApplicable('The files have no plated hole.')
      const sizes = [...groupedBy(plated, ({ diameterMm }) => toHundredth(diameterMm)).values()]
      return judgedByParts({
        parts: sizes.map((alike) => judgeSize(alike, { boardMm, barrelUm, rows, max, guard })),
        noun: 'sizes',
        limit: `At most ${formatQuantity(max.value, '×')} (${max.document})`,
        working: [{ label: 'Ratio', formula: 'board thickness/drilled hole', result: 'by size below' }],
        sources: [max.limit.byDefault.from],
        notes: [
          'Whether a size is finished or drilled is as the rows of Holes and leads say of it; where none has it, as all of them say; else both ways are judged.',
        ],
      })
    },
  })

interface Terms {
  readonly boardMm: number
  readonly barrelUm: number
  readonly rows: readonly LeadHole[]
  readonly max: GoverningRequirement
  readonly guard: GoverningRequirement
}

const toHundredth = (mm: number): number => Math.round(mm * 100)

function judgeSize(alike: readonly BoardHole[], terms: Terms): PlacedPart {
  const hole = alike[0]!
  const placed = { at: middleOf(hole), layer: 'top', rank: hole.diameterMm }
  const given = [...givenOf(hole, terms.rows)]
  const ways = given.map((way) => judgeWay(alike, way, terms))
  if (new Set(ways.map(({ verdict }) => verdict)).size > 1)
    return {
      subject: subjectOf(alike),
      verdict: 'undetermined',
      found: `whether its size is finished or drilled is not said: ${ways.map(({ found }) => found).join(', or ')}`,
      ...placed,
    }
  return { ...decidingPart(ways)!, ...placed }
}

type Given = LeadHole['holeGiven']

function givenOf(hole: BoardHole, rows: readonly LeadHole[]): ReadonlySet<Given> {
  const ofSize = rowsOfSize(rows, hole)
  const said = new Set((ofSize.length > 0 ? ofSize : rows).map(({ holeGiven }) => holeGiven))
  return said.size > 0 ? said : new Set<Given>(['finished', 'drilled'])
}

function judgeWay(alike: readonly BoardHole[], given: Given, { boardMm, barrelUm, max, guard }: Terms) {
  const { diameterMm } = alike[0]!
  const drillMm = given === 'drilled' ? diameterMm : diameterMm + (2 * barrelUm) / 1000
  const found = boardMm / drillMm
  return partOn({
    subject: subjectOf(alike),
    found: `${inMm(boardMm)} through a drilled hole of ${inMm(drillMm)}: ${formatQuantity(found, '×', 3)}`,
    measured: { board: measure(boardMm, 'mm'), drill: measure(toMicrometre(drillMm), 'mm') },
    margin: {
      found,
      limit: max.value,
      unit: '×',
      direction: 'at most',
      guardBand: (guard.value / 100) * max.value,
    },
  })
}

const subjectOf = (alike: readonly BoardHole[]): string => `${alike.length} of ${inMm(alike[0]!.diameterMm)}`
