import {
  BREAKOUT_BY_CLASS,
  CURRENT_LAND_EDITIONS,
  INNER_RING,
  LAND_EDITIONS,
} from '@/shared/materials/land-allowances'
import { minLandMm, remainingRingMm } from '@/shared/physics/land'
import { copperLayers } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { productClass } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { decidingPart, judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'
import { holeOf } from '@/shared/holes/joint-row'
import { ringReads, type RingTerms } from '@/shared/holes/ring-terms'

const LAND_STEP_MM = 0.05

export const annularRing = rule({
  id: 'annular-ring',
  title: 'Land and annular ring',
  why: 'The fillet stands on the ring of copper that the drill leaves. Too small a land breaks out of the hole, lifts when reworked and gives the solder nothing to wet.',
  formula:
    'outside (land − hole of the edition − allowance)/2; on inner layers (land − drilled hole − allowance)/2; each at least the ring',
  stage: 'specification',
  version: 2,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    ...ringReads,
    layers: copperLayers,
    productClass,
  },
  judge({ holes, wall, edition, layers, productClass: grade, ...rest }) {
    const terms: RingTerms = {
      ...rest,
      barrelUm: wall,
      editions: edition ? [edition] : CURRENT_LAND_EDITIONS,
    }
    const rings = holes.map((row, index) =>
      partOrContradiction(row.component, () => judgeRow(row, index, terms)),
    )
    const inner = layers > 2 ? holes.flatMap((row, index) => innerRing(row, index, terms)) : []
    const parts = [...rings, ...inner]
    const deciding = decidingPart(parts)
    const row = deciding && holes[rings.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'kinds of ring',
      limit: `A ring of at least ${formatQuantity(terms.supported.value, 'mm')} (${terms.supported.document}), unplated ${formatQuantity(terms.unsupported.value, 'mm')}, on inner layers ${formatQuantity(terms.internal.value, 'mm')} from the drilled hole, after the fabrication allowance of level ${terms.level}`,
      working: row && deciding.margin ? workingOf(row, terms) : [],
      sources: [
        ...terms.editions.map((key) => LAND_EDITIONS[key].source),
        ...(inner.length > 0 ? [terms.internal.limit.byDefault.from, INNER_RING.source] : []),
        BREAKOUT_BY_CLASS[grade].source,
      ],
      notes: [
        edition
          ? `Land by ${LAND_EDITIONS[edition].label}.`
          : `No edition is chosen: the strictest of ${CURRENT_LAND_EDITIONS.map((key) => LAND_EDITIONS[key].label).join(' and ')} applies.`,
        `A delivered board of class ${grade} may show ${BREAKOUT_BY_CLASS[grade].allowed}; the design allows none.`,
        ...(inner.length > 0 ? [INNER_RING.message] : []),
      ],
    })
  },
})

/** The edition that leaves the least ring. */
function binding(row: LeadHole, { editions, level, barrelUm }: RingTerms) {
  const hole = holeOf(row, barrelUm)
  return editions
    .map((key) => {
      const edition = LAND_EDITIONS[key]
      return { hole, edition, remainingMm: remainingRingMm(row.landMm, { hole, level, edition }) }
    })
    .reduce((min, other) => (other.remainingMm < min.remainingMm ? other : min))
}

const ringFor = (row: LeadHole, { supported, unsupported }: RingTerms): number =>
  row.plated ? supported.value : unsupported.value

function judgeRow(row: LeadHole, index: number, terms: RingTerms): Part {
  const { hole, edition, remainingMm } = binding(row, terms)
  const found = Number(remainingMm.toFixed(7))
  const ringMm = ringFor(row, terms)
  const part = partOn({
    subject: row.component,
    measured: { land: measure(row.landMm, 'mm') },
    found: `land ${formatQuantity(row.landMm, 'mm')} leaves a ring of ${formatQuantity(found, 'mm')}`,
    margin: { found, limit: ringMm, unit: 'mm', direction: 'at least', guardBand: terms.guard.value },
  })
  if (part.verdict === 'meets') return part
  const value = stepAbove(
    minLandMm({ hole, level: terms.level, edition, ringMm: ringMm + terms.guard.value }),
    LAND_STEP_MM,
  )
  const remedy: Remedy = {
    message: `${row.component}: make the land ${formatQuantity(value, 'mm')}.`,
    cell: { parameter: leadHoles.key, row: index, column: 'landMm', value },
  }
  return { ...part, remedy }
}

/**
 * The ring a land of an inner layer keeps round the drilled hole: plating comes later.
 * Its allowance is that of IPC-2221, whose ring it is. Nothing of an unplated hole joins an inner layer.
 */
function innerRing(row: LeadHole, index: number, terms: RingTerms): Part[] {
  if (!row.plated) return []
  const subject = `${row.component}, inner layers`
  const about = { component: row.component, layer: 'inner' }
  return [
    {
      ...partOrContradiction(subject, () => {
        const landMm = row.innerLandMm ?? row.landMm
        const { drillMm } = holeOf(row, terms.barrelUm)
        const allowanceMm = LAND_EDITIONS['ipc-2221'].allowanceMm[terms.level]
        const found = Number(((landMm - drillMm - allowanceMm) / 2).toFixed(7))
        const part = partOn({
          subject,
          measured: { land: measure(landMm, 'mm'), drill: measure(drillMm, 'mm') },
          found: `land ${formatQuantity(landMm, 'mm')} round a drilled hole of ${formatQuantity(drillMm, 'mm')} leaves a ring of ${formatQuantity(found, 'mm')}`,
          margin: {
            found,
            limit: terms.internal.value,
            unit: 'mm',
            direction: 'at least',
            guardBand: terms.guard.value,
          },
        })
        if (part.verdict === 'meets') return part
        const value = stepAbove(
          drillMm + allowanceMm + 2 * (terms.internal.value + terms.guard.value),
          LAND_STEP_MM,
        )
        return {
          ...part,
          remedy: {
            message: `${row.component}: make the land on inner layers ${formatQuantity(value, 'mm')}.`,
            cell: { parameter: leadHoles.key, row: index, column: 'innerLandMm', value },
          },
        }
      }),
      about,
    },
  ]
}

function workingOf(row: LeadHole, terms: RingTerms): WorkingLine[] {
  const { hole, edition, remainingMm } = binding(row, terms)
  const base = edition.over === 'largest hole' ? hole.maxMm : hole.minMm
  const allowance = edition.allowanceMm[terms.level]
  const ringMm = ringFor(row, terms)
  const mm = (value: number): string => formatQuantity(Number(value.toFixed(7)), 'mm')
  return [
    {
      label: `Ring left at ${row.component}`,
      formula: `(land − ${edition.over} − allowance)/2`,
      numbers: `(${mm(row.landMm)} − ${mm(base)} − ${mm(allowance)})/2`,
      result: mm(remainingMm),
    },
    {
      label: 'Least land',
      formula: `${edition.over} + 2 · ring + allowance`,
      numbers: `${mm(base)} + 2 · ${mm(ringMm)} + ${mm(allowance)}`,
      result: mm(minLandMm({ hole, level: terms.level, edition, ringMm })),
    },
  ]
}
