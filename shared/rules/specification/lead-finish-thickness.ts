import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { tinCoatingLeast, tinCoatingMost } from '@/shared/plan/limits/finishes'
import { leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import type { Ruling } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, type Margin, type Part, type Remedy } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

/** What is ordered may equal the limit: the lot's own thickness is judged when it comes. */
const GUARD_UM = 0

export const leadFinishThickness = rule({
  id: 'lead-finish-thickness',
  title: 'Thickness of tin on leads',
  why: 'A lead waits longer in store than the board: thin tin has turned into compound before it is soldered.',
  stage: 'specification',
  version: 1,
  reads: { finishes: leadFinishes, least: tinCoatingLeast, most: tinCoatingMost },
  judge({ finishes, least, most }) {
    const limit = `${formatQuantity(least.value, '1')} to ${formatQuantity(most.value, 'µm')} of tin or tin-lead (${[...new Set([least.document, most.document])].join('; ')})`
    const parts = finishes.flatMap((row, index) =>
      LEAD_COATINGS[row.coating].tinWindow ? [judgeRow(row, index, least, most)] : [],
    )
    const sources = [least.limit.byDefault.from]
    if (parts.length === 0) {
      return notApplicable('No lead is coated with tin or solder.')
    }
    return judgedByParts({
      parts,
      noun: 'tinned leads',
      limit,
      working: [{ label: 'Window', result: limit }],
      sources,
      notes: [
        'Qualified components may carry less hot-dipped coat (1.5 to 5 µm, MIL-PRF-38535K, Table A-III): let the programme’s requirement say so where it applies.',
      ],
    })
  },
})

function judgeRow(row: LeadFinish, index: number, least: Ruling, most: Ruling): Part {
  const common = { unit: 'µm', guardBand: GUARD_UM } as const
  const high: Margin = {
    ...common,
    found: row.coatingMostUm ?? row.coatingUm,
    limit: most.value,
    direction: 'at most',
  }
  const low: Margin = { ...common, found: row.coatingUm, limit: least.value, direction: 'at least' }
  const margin = tightest(low, high)
  const verdict = verdictOn(margin)
  const ordered =
    row.coatingMostUm === undefined
      ? `at least ${formatQuantity(row.coatingUm, 'µm')}`
      : `${formatQuantity(row.coatingUm, '1')} to ${formatQuantity(row.coatingMostUm, 'µm')}`
  const part: Part = {
    subject: row.component,
    verdict,
    found: `${LEAD_COATINGS[row.coating].label}, ${ordered}`,
    margin,
    measured: {
      coating: row.coating,
      orderedLeast: measure(row.coatingUm, 'µm'),
      ...(row.coatingMostUm !== undefined && { orderedMost: measure(row.coatingMostUm, 'µm') }),
    },
  }
  if (verdict !== 'fails') return part
  const [atLeast, atMost] = [
    `at least ${formatQuantity(least.value, 'µm')}`,
    `at most ${formatQuantity(most.value, 'µm')}`,
  ]
  const leastWrong = verdictOn(low) === 'fails' || row.coatingUm > most.value
  const mostWrong = row.coatingMostUm !== undefined && row.coatingMostUm > most.value
  if (leastWrong && mostWrong) {
    return { ...part, remedy: { says: `${row.component}: order ${atLeast} and ${atMost} of coating.` } }
  }
  const cell = mostWrong
    ? { column: 'coatingMostUm', value: most.value, says: atMost }
    : { column: 'coatingUm', value: least.value, says: atLeast }
  const remedy: Remedy = {
    says: `${row.component}: order ${cell.says} of coating.`,
    cell: { parameter: leadFinishes.key, row: index, column: cell.column, value: cell.value },
  }
  return { ...part, remedy }
}
