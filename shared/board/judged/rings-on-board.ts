import { CURRENT_LAND_EDITIONS, LAND_EDITIONS } from '@/shared/materials/land-allowances'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { ringReads, type RingTerms } from '@/shared/holes/ring-terms'
import { formatQuantity } from '@/shared/quantity/format'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { decidingPart, judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import type { BoardHole, Land } from '../hole'
import { middleOf } from '../joined-copper'
import { holeName } from './hole-name'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'
import { innerRingLeft, outerRingLeft } from './ring-left'
import { rowsForHole } from './rows-for-hole'

const LAND_STEP_MM = 0.05

/** Every ring round a hole for a lead, on every layer that has a land there, as the table's rows are judged. */
export const ringsOnBoard = ({ holes }: Board) =>
  rule({
    id: 'rings-on-board',
    title: 'Rings of the board’s holes',
    why: 'The table of holes says what was meant; the files say what will be made. One land too small among hundreds is enough for a joint that lifts.',
    formula:
      'ring drawn − what hole tolerance and allowance can take; on inner layers from the drilled hole; each at least the ring',
    stage: 'specification',
    version: 1,
    reads: {
      rows: leadHoles,
      barrelUm: barrelPlating,
      ...ringReads,
    },
    judge({ rows, edition, ...rest }) {
      const terms: RingTerms = { ...rest, editions: edition ? [edition] : CURRENT_LAND_EDITIONS }
      const rings = ringsIn(holes)
      if (rings.length === 0) return notApplicable('The files have no hole for a lead with a land.')
      const vias = holes.filter(({ kind }) => kind === 'via').length
      return judgedByParts({
        parts: rings.map((ring) => judgeRing(ring, rowsForHole(rows, ring.hole), terms)),
        noun: 'rings',
        limit: `A ring of at least ${inMm(terms.supported.value)} (${terms.supported.document}), unplated ${inMm(terms.unsupported.value)}, on inner layers ${inMm(terms.internal.value)} from the drilled hole, after the fabrication allowance of level ${terms.level}`,
        working: [
          {
            label: 'Ring left',
            formula: '(hole + 2 · ring drawn − hole of the edition − allowance)/2',
            result: 'by place below',
          },
        ],
        sources: terms.editions.map((key) => LAND_EDITIONS[key].source),
        notes: [
          'Tolerance, and whether the size is finished or drilled, are those of the row of Holes and leads with the same hole; where several rows have it, the strictest.',
          ...(vias > 0 ? [`${vias} vias take no lead and are not judged here.`] : []),
        ],
      })
    },
  })

interface Ring {
  readonly hole: BoardHole
  readonly layer: string
  readonly land: Land
  readonly inner: boolean
}

const ringsIn = (holes: readonly BoardHole[]): Ring[] =>
  holes.filter(({ kind }) => kind === 'component').flatMap(ringsOf)

/** The rings as they are drawn, where nothing is specified to hold against them. */
export const unjudgedRings = ({ holes }: Board): PlacedPart[] =>
  ringsIn(holes).map((ring) => ({
    subject: nameOf(ring),
    verdict: 'undetermined',
    found: drawnInWords(ring),
    at: middleOf(ring.hole),
    layer: ring.layer,
    rank: ring.land.ringMm,
  }))

const drawnInWords = ({ land: { ringMm }, hole }: Ring): string =>
  ringMm < 0
    ? `the hole of ${inMm(hole.diameterMm)} breaks out by ${inMm(-ringMm)} as drawn`
    : `a ring of ${inMm(ringMm)} is drawn round a hole of ${inMm(hole.diameterMm)}`

const ringsOf = (hole: BoardHole): Ring[] => [
  ...(['top', 'bottom'] as const).flatMap((layer) => {
    const land = hole[layer]
    return land ? [{ hole, layer, land, inner: false }] : []
  }),
  ...(hole.plated === false ? [] : hole.inner).map(({ layer, land }) => {
    return { hole, layer: `inner ${layer}`, land, inner: true }
  }),
]

function judgeRing(ring: Ring, rows: readonly LeadHole[], terms: RingTerms): PlacedPart {
  const { hole, layer, land } = ring
  const placed = { at: middleOf(hole), layer, rank: land.ringMm }
  const about = hole.component !== undefined && { about: { pin: [hole.component, hole.pin].join(' ') } }
  const subject = nameOf(ring)
  const drawn = drawnInWords(ring)
  const measured = { ring: measure(toMicrometre(land.ringMm), 'mm'), hole: measure(hole.diameterMm, 'mm') }
  const part = decidingPart(
    rows.map((row) => partOrContradiction(subject, () => judgeByRow(ring, row, { subject, drawn, terms }))),
  ) ?? {
    subject,
    verdict: 'undetermined',
    found: `${drawn}, and no row of Holes and leads has that hole`,
  }
  return { ...part, ...about, measured, ...placed }
}

function judgeByRow(
  { land, inner }: Ring,
  row: LeadHole,
  { subject, drawn, terms }: { subject: string; drawn: string; terms: RingTerms },
) {
  const { leftMm, limitMm, landMm } = (inner ? innerRingLeft : outerRingLeft)(row, land.ringMm, terms)
  const part = partOn({
    subject,
    found: `${drawn}; of it ${inMm(leftMm)} is left`,
    margin: {
      found: toMicrometre(leftMm),
      limit: limitMm,
      unit: 'mm',
      direction: 'at least',
      guardBand: terms.guard.value,
    },
  })
  if (part.verdict === 'meets') return part
  const message = `Draw a land of ${formatQuantity(stepAbove(landMm, LAND_STEP_MM), 'mm')}, centred on the hole.`
  return { ...part, remedy: { message } }
}

const nameOf = ({ hole, layer }: Ring): string => `${holeName(hole)}, ${layer}`
