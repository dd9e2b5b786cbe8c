import { LEAD_BARRIERS, LEAD_BASES, LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { published } from '@/shared/sources/provenance'
import { brassBarrierMin } from '@/shared/plan/limits/finishes'
import { leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'

export const brassBarrier = rule({
  id: 'brass-barrier',
  title: 'Barrier between brass and tin',
  why: 'Zinc from brass comes through tin, oxidises on its surface and stops the wetting within weeks; copper or nickel between them keeps it back.',
  formula: 'copper or nickel under the coating of brass ≥ least',
  stage: 'specification',
  version: 1,
  reads: { finishes: leadFinishes, min: brassBarrierMin },
  judge({ finishes, min }) {
    const limit = `At least ${formatQuantity(min.value, 'µm')} of copper or nickel under the coating of brass (${min.document})`
    const sources = [
      min.limit.byDefault.from,
      published('ASTM B545: undercoat on alloys with more than 5 % zinc'),
    ]
    const parts = finishes.flatMap((row, index) =>
      LEAD_BASES[row.base].zinc ? [judgeRow(row, index, min)] : [],
    )
    if (parts.length === 0) return notApplicable('No lead is brass.')
    return judgedByParts({
      parts,
      noun: 'brass leads',
      limit,
      working: [{ label: 'Barrier asked', result: formatQuantity(min.value, 'µm') }],
      sources,
      notes: ['Copper keeps zinc back but not the growth of copper-tin compound; nickel slows both.'],
    })
  },
})

function judgeRow(row: LeadFinish, index: number, min: GoverningRequirement): Part {
  const coating = LEAD_COATINGS[row.coating].label
  const measured = { coating: row.coating, barrier: row.barrier }
  if (row.barrier === 'none') {
    return {
      subject: row.component,
      verdict: 'fails',
      measured,
      found: `${coating} straight on brass`,
      remedy: {
        message: `${row.component}: order at least ${formatQuantity(min.value, 'µm')} of copper or nickel under the coating.`,
      },
    }
  }
  if (row.barrierUm === undefined) {
    return {
      subject: row.component,
      verdict: 'undetermined',
      measured,
      found: `the thickness of the ${LEAD_BARRIERS[row.barrier].label.toLowerCase()} under the coating is missing`,
    }
  }
  const part = partOn({
    subject: row.component,
    measured,
    found: `${coating} over ${formatQuantity(row.barrierUm, 'µm')} of ${LEAD_BARRIERS[row.barrier].label.toLowerCase()} on brass`,
    margin: {
      found: row.barrierUm,
      limit: min.value,
      unit: 'µm',
      direction: 'at least',
      // What is ordered may equal the limit: the lot's own thickness is judged when it comes.
      guardBand: 0,
    },
  })
  if (part.verdict === 'meets') return part
  const remedy: Remedy = {
    message: `${row.component}: order at least ${formatQuantity(min.value, 'µm')} of ${LEAD_BARRIERS[row.barrier].label.toLowerCase()}.`,
    cell: { parameter: leadFinishes.key, row: index, column: 'barrierUm', value: min.value },
  }
  return { ...part, remedy }
}
