import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import {
  palladiumCoatMin,
  palladiumCoatMax,
  silverCoatMin,
  silverCoatMax,
  tinCoatingMin,
  tinCoatingMax,
} from '@/shared/plan/limits/finishes'
import { leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, type Margin, type Part, type Remedy } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

export const leadFinishThickness = rule({
  id: 'lead-finish-thickness',
  title: 'Thickness of coatings on leads',
  why: 'A lead waits longer in store than the board: thin tin has turned into compound before it is soldered, and thin silver or palladium leaves the metal under it to be wetted.',
  formula: 'least and most ordered within the window of tin, silver or palladium',
  stage: 'specification',
  version: 2,
  reads: {
    finishes: leadFinishes,
    min: tinCoatingMin,
    max: tinCoatingMax,
    silverMin: silverCoatMin,
    silverMax: silverCoatMax,
    palladiumMin: palladiumCoatMin,
    palladiumMax: palladiumCoatMax,
  },
  judge({ finishes, ...limits }) {
    const windows: Windows = {
      tin: { name: 'tin or tin-lead', min: limits.min, max: limits.max },
      silver: { name: 'silver', min: limits.silverMin, max: limits.silverMax },
      palladium: { name: 'palladium', min: limits.palladiumMin, max: limits.palladiumMax },
    }
    const judged = finishes.flatMap((row, index) => {
      const kind = kindOf(row)
      return kind ? [{ kind, part: judgeRow(row, index, windows[kind]) }] : []
    })
    if (judged.length === 0) return notApplicable('No lead is coated with tin, solder, silver or palladium.')
    const used = [...new Set(judged.map(({ kind }) => kind))].map((kind) => windows[kind])
    const limit = used.map(inWords).join('; ')
    const parts = judged.map(({ part }) => part)
    const sources = used.map(({ min }) => min.limit.byDefault.from)
    return judgedByParts({
      parts,
      noun: 'coated leads',
      limit,
      working: [{ label: 'Window', result: limit }],
      sources,
      notes: [
        'Qualified components may carry less hot-dipped coat (1.5 to 5 µm, MIL-PRF-38535K, Table A-III): let the programme’s requirement say so where it applies.',
        ...(windows.palladium.min.kind === 'default' && judged.some(({ kind }) => kind === 'palladium')
          ? [
              'Frames plated before moulding carry palladium of a hundredth of that (common practice): let the programme’s requirement say so where it applies.',
            ]
          : []),
        ...(finishes.some((row) => kindOf(row) && row.coatingMostUm === undefined)
          ? ['Where an order sets no most, only the least is judged.']
          : []),
      ],
    })
  },
})

interface Window {
  readonly name: string
  readonly min: GoverningRequirement
  readonly max: GoverningRequirement
}
type CoatKind = 'tin' | 'silver' | 'palladium'
type Windows = Readonly<Record<CoatKind, Window>>

/** Which window a coating is held to; gold is judged by itself. */
function kindOf({ coating: key }: LeadFinish): CoatKind | undefined {
  const { tinWindow, metal } = LEAD_COATINGS[key]
  if (tinWindow) return 'tin'
  return metal === 'silver' || metal === 'palladium' ? metal : undefined
}

const inWords = ({ name, min, max }: Window): string =>
  `${formatQuantity(min.value, '1')} to ${formatQuantity(max.value, 'µm')} of ${name} (${[...new Set([min.document, max.document])].join('; ')})`

function judgeRow(row: LeadFinish, index: number, { min, max }: Window): Part {
  // What is ordered may equal the limit: the lot's own thickness is judged when it comes.
  const common = { unit: 'µm', guardBand: 0 } as const
  const high: Margin = {
    ...common,
    found: row.coatingMostUm ?? row.coatingUm,
    limit: max.value,
    direction: 'at most',
  }
  const low: Margin = { ...common, found: row.coatingUm, limit: min.value, direction: 'at least' }
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
      orderedMin: measure(row.coatingUm, 'µm'),
      ...(row.coatingMostUm !== undefined && { orderedMax: measure(row.coatingMostUm, 'µm') }),
    },
  }
  if (verdict !== 'fails') return part
  const [atLeast, atMost] = [
    `at least ${formatQuantity(min.value, 'µm')}`,
    `at most ${formatQuantity(max.value, 'µm')}`,
  ]
  const minWrong = verdictOn(low) === 'fails' || row.coatingUm > max.value
  const maxWrong = row.coatingMostUm !== undefined && row.coatingMostUm > max.value
  if (minWrong && maxWrong) {
    return { ...part, remedy: { message: `${row.component}: order ${atLeast} and ${atMost} of coating.` } }
  }
  const cell = maxWrong
    ? { column: 'coatingMostUm', value: max.value, message: atMost }
    : { column: 'coatingUm', value: min.value, message: atLeast }
  const remedy: Remedy = {
    message: `${row.component}: order ${cell.message} of coating.`,
    cell: { parameter: leadFinishes.key, row: index, column: cell.column, value: cell.value },
  }
  return { ...part, remedy }
}
