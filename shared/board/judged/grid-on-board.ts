import { gridShareMin } from '@/shared/plan/limits/lead-holes'
import { gridShareGuard } from '@/shared/plan/limits/specification-guards'
import { isStated } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { fromMemory } from '@/shared/sources/provenance'
import { verdictOn, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import type { BoardHole } from '../hole'
import { GRID_REACH_MM, onGrid, type OnGrid } from '../hole-grid'
import { middleOf } from '../joined-copper'
import { holeName } from './hole-name'
import { inMm } from './in-words'
import type { PlacedPart } from './placed-part'

/** Pitches that holes are laid out on, the coarsest first. */
const PITCHES_MM = [2.54, 1.27, 0.635, 0.5] as const
const SOURCES = [
  fromMemory('IEC 60097: basic grid 2.54 mm, with 1.27 and 0.635 mm below it'),
  fromMemory('IEC 60097: metric grid of 0.5 mm, secondary 0.05 mm'),
]

/** The share of the holes for leads that lie on one grid, and those that do not. */
export const gridOnBoard = ({ holes }: Board) =>
  rule({
    id: 'grid-on-board',
    title: 'The board’s holes on a grid',
    why: 'Insertion, drilling and test fixtures work to a grid; the files tell which holes lie off it, whatever the table says.',
    formula: 'holes for leads on the grid that meets most of them/all ≥ least',
    stage: 'specification',
    version: 1,
    reads: { min: gridShareMin, guard: gridShareGuard },
    judge({ min, guard }) {
      const leads = holes.filter(({ kind }) => kind === 'component')
      if (leads.length === 0) return notApplicable('The files have no hole for a lead.')
      const grids = PITCHES_MM.map((pitch) => onGrid(leads.map(middleOf), pitch))
      const best = grids.reduce((one, other) => (countOn(other) > countOn(one) ? other : one))
      const shares = grids.map((grid) => inShare(grid, leads.length)).join(', ')
      if (!isStated(min))
        return notApplicable(`${shares} of the holes lie on a grid; the programme asks for none.`)
      const found = (100 * countOn(best)) / leads.length
      const margin = {
        found,
        limit: min.value,
        unit: '%',
        direction: 'at least',
        guardBand: guard.value,
      } as const
      const verdict = verdictOn(margin)
      const whole: Part = { subject: 'Holes for leads', verdict, found: `${shares} lie on a grid`, margin }
      return judgedByParts({
        parts: [whole, ...offGrid(leads, best, verdict)],
        noun: 'matters',
        limit: `At least ${formatQuantity(min.value, '%')} of the joints (${min.document})`,
        working: [
          {
            label: 'Share',
            formula: 'holes on the grid/holes for leads',
            numbers: `${countOn(best)}/${leads.length} on ${inMm(best.pitchMm)}`,
            result: formatQuantity(found, '%', 4),
          },
        ],
        sources: SOURCES,
        notes: [
          `A grid is laid where it meets most holes; on it is what lies within ${inMm(GRID_REACH_MM)} both ways.`,
        ],
      })
    },
  })

const countOn = ({ on }: OnGrid): number => on.filter(Boolean).length

const inShare = (grid: OnGrid, holes: number): string =>
  `${formatQuantity((100 * countOn(grid)) / holes, '%', 3)} on ${inMm(grid.pitchMm)}`

const offGrid = (
  leads: readonly BoardHole[],
  { on, pitchMm }: OnGrid,
  verdict: Part['verdict'],
): PlacedPart[] =>
  leads
    .filter((_, at) => !on[at])
    .map((hole) => ({
      subject: holeName(hole),
      verdict,
      found: `lies off the grid of ${inMm(pitchMm)}`,
      at: middleOf(hole),
      layer: 'top',
      rank: 0,
    }))
