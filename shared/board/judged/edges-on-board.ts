import { copperToEdgeMin } from '@/shared/plan/limits/spacings'
import { edgeClearanceGuard } from '@/shared/plan/limits/specification-guards'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { undetermined, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import { CLEARANCE_REACH_MM, type Clearance, type WallClearance } from '../clearances'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'

const READS = { min: copperToEdgeMin, guard: edgeClearanceGuard }

/** All copper against the outline of the board and what is cut out of it. */
export const edgesOnBoard = ({ edges, outline }: Board) =>
  rule({
    id: 'edges-on-board',
    title: 'Copper to the board’s edges',
    why: 'Copper near a cut edge is bared and corrodes; copper beyond the outline tells that a file is not what it was taken for.',
    formula: 'distance of each piece of copper from outline and cut-outs ≥ least',
    stage: 'specification',
    version: 1,
    reads: READS,
    judge({ min, guard }) {
      if (!outline?.closed)
        return undetermined(
          outline ? 'The outline of the board is not closed.' : 'No file gives the outline of the board.',
          ['A closed outline among the board files'],
          limitOf(min),
        )
      const near = edges.map((edge) => {
        const where =
          edge.gapMm < 0
            ? `lies ${inMm(-edge.gapMm)} beyond the edge`
            : `is ${inMm(edge.gapMm)} from the edge`
        return judgeClearance(edge, `${edge.net}, ${edge.layer}`, where, { min, guard })
      })
      return judgedByParts({
        parts: [...near, ...beyond(near.length, { min, guard })],
        noun: 'pieces of copper',
        limit: limitOf(min),
        working: [],
        sources: [min.limit.byDefault.from],
        notes: ['Edge contacts are meant to reach the edge and are listed all the same.'],
      })
    },
  })

/** All copper against the walls of holes without plating, which are edges of the laminate like any other. */
export const wallsOnBoard = ({ walls, holes }: Board) =>
  rule({
    id: 'walls-on-board',
    title: 'Copper to unplated holes',
    why: 'The wall of an unplated hole is cut like an edge: copper near it is bared, and a screw through it reaches what it should not.',
    formula: 'distance of copper from the wall of each unplated hole ≥ least to the edge of the board',
    stage: 'specification',
    version: 1,
    reads: READS,
    judge({ min, guard }) {
      const unsaid = holes.filter(({ plated }) => plated === undefined).length
      if (unsaid === 0 && holes.every(({ plated }) => plated))
        return notApplicable('Every hole of the files is plated.')
      const near = walls.map((wall) =>
        judgeClearance(wall, `Hole of ${inMm(wall.diameterMm)}, ${wall.layer}`, whereOf(wall), {
          min,
          guard,
        }),
      )
      return judgedByParts({
        parts: [...near, ...notSaid(unsaid), ...(unsaid > 0 ? [] : beyond(near.length, { min, guard }))],
        noun: 'holes by layer',
        limit: `${limitOf(min)}; the wall of an unplated hole counts as an edge`,
        working: [],
        sources: [min.limit.byDefault.from],
        notes: ['The land that is drawn for an unplated hole itself is left out.'],
      })
    },
  })

const whereOf = ({ cut, net, gapMm }: WallClearance): string =>
  cut ? `it is cut through ${net}` : `${net} is ${inMm(gapMm)} from its wall`

interface Terms {
  readonly min: GoverningRequirement
  readonly guard: GoverningRequirement
}

const limitOf = (min: GoverningRequirement): string => `Copper at least ${inMm(min.value)} (${min.document})`

const guardOf = ({ min, guard }: Terms): number => (guard.value / 100) * min.value

const judgeClearance = (
  { gapMm, at, layer, ends }: Clearance,
  subject: string,
  found: string,
  terms: Terms,
): PlacedPart => ({
  ...partOn({
    subject,
    found,
    margin: {
      found: toMicrometre(gapMm),
      limit: terms.min.value,
      unit: 'mm',
      direction: 'at least',
      guardBand: guardOf(terms),
    },
  }),
  at,
  layer,
  rank: gapMm,
  ...(ends && { ends }),
})

function notSaid(holes: number): Part[] {
  if (holes === 0) return []
  const found = 'the files do not say whether they are plated: confirm what the drill file is'
  return [{ subject: `${holes} holes`, verdict: 'undetermined', found }]
}

function beyond(listed: number, terms: Terms): Part[] {
  const needed = terms.min.value + guardOf(terms)
  if (needed > CLEARANCE_REACH_MM)
    return [
      {
        subject: 'Copper further off',
        verdict: 'undetermined',
        found: `it is looked for up to ${inMm(CLEARANCE_REACH_MM)}, and ${inMm(needed)} is asked with its guard band`,
      },
    ]
  if (listed > 0) return []
  return [{ subject: 'Copper', verdict: 'meets', found: `none is within ${inMm(CLEARANCE_REACH_MM)}` }]
}
