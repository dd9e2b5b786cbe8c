import type { SPACING_CATEGORIES } from '@/shared/materials/conductor-spacings'
import { spacings, type SpacingRow } from '@/shared/plan/parameters/spacings'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import { GAP_REACH_MM, type Board } from '../board'
import type { NetGap } from '../gaps'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'
import type { Part } from '@/shared/rules/finding'

/** Every gap between nets against the closest spacing that the specification states for its layer. */
export const gapsOnBoard = ({ gaps, layers }: Board) =>
  rule({
    id: 'gaps-on-board',
    title: 'Gaps of the board’s copper',
    why: 'The specification lists the closest spacing of each kind. Copper that lies closer was never judged for its voltage.',
    formula:
      'gap between nets ≥ least gap stated for the layer, or for these two nets where a row names both',
    stage: 'specification',
    version: 1,
    reads: { rows: spacings },
    judge({ rows }) {
      return judgedByParts({
        parts: layers.flatMap((layer) =>
          judgeLayer(
            layer,
            gaps.filter((gap) => gap.layer === layer),
            rows,
          ),
        ),
        noun: 'gaps',
        limit: 'The closest spacings as specified: no copper lies closer than the least of them',
        working: [],
        sources: [],
        notes: [
          'Which net carries which voltage the files do not say: a spacing for a higher voltage is held only against nets that its row names.',
          'No guard band: what is stated is what was to be drawn; etching’s share is taken off where a spacing is judged for its voltage.',
        ],
      })
    },
  })

/** The gaps as they are, where nothing is specified to hold against them. */
export const unjudgedGaps = ({ gaps }: Board): PlacedPart[] =>
  gaps.map(({ nets, layer, gapMm, at, ends }) => ({
    subject: `${nets.join(' to ')}, ${layer}`,
    verdict: 'undetermined',
    found: inMm(gapMm),
    at,
    ends,
    layer,
    rank: gapMm,
  }))

const isInner = (layer: string): boolean => layer.startsWith('inner')

/** Category B1 is that of conductors inside a board (IPC-2221, Table 6-1). */
const INSIDE: keyof typeof SPACING_CATEGORIES = 'B1'

function judgeLayer(layer: string, gaps: readonly NetGap[], all: readonly SpacingRow[]): Part[] {
  const rows = all.filter(({ category }) => (category === INSIDE) === isInner(layer))
  if (rows.length === 0)
    return [
      {
        subject: layer,
        about: { layer },
        verdict: 'undetermined',
        found: 'no spacing is stated for such a layer',
      },
    ]
  const least = rows.reduce((one, other) => (other.gapMm < one.gapMm ? other : one))
  const near = gaps.map((gap) => judgeGap(gap, namedFor(gap.nets, rows) ?? least))
  return [...near, ...beyond(layer, least, near.length)]
}

function judgeGap({ nets, layer, gapMm, at, ends }: NetGap, row: SpacingRow): PlacedPart {
  return {
    ...partOn({
      subject: `${nets.join(' to ')}, ${layer}`,
      about: { row: row.between },
      found: `${inMm(gapMm)}; the closest spacing stated is ${inMm(row.gapMm)}, at “${row.between}”`,
      margin: {
        found: toMicrometre(gapMm),
        limit: row.gapMm,
        unit: 'mm',
        direction: 'at least',
        guardBand: 0,
      },
    }),
    at,
    ends,
    layer,
    rank: gapMm,
  }
}

/** Gaps are looked for up to a reach: a stated spacing beyond it leaves some unseen. */
function beyond(layer: string, { gapMm }: SpacingRow, listed: number): Part[] {
  if (gapMm > GAP_REACH_MM)
    return [
      {
        subject: layer,
        about: { layer },
        verdict: 'undetermined',
        found: `gaps are looked for up to ${inMm(GAP_REACH_MM)}, and ${inMm(gapMm)} is stated`,
      },
    ]
  if (listed > 0) return []
  return [
    { subject: layer, about: { layer }, verdict: 'meets', found: `no gap is below ${inMm(GAP_REACH_MM)}` },
  ]
}

/** The row whose name has the names of both nets in it, as words; the widest where several have. */
function namedFor(nets: readonly [string, string], rows: readonly SpacingRow[]): SpacingRow | undefined {
  const named = rows.filter(({ between }) => {
    const words = wordsOf(between)
    return nets.every((net) => words.has(net.toLowerCase()))
  })
  return named.sort((one, other) => other.gapMm - one.gapMm)[0]
}

const wordsOf = (text: string): Set<string> => new Set(text.toLowerCase().split(/[\s,;:()–—]+/))
