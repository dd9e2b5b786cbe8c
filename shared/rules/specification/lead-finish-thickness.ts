import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import {
  palladiumCoatLeast,
  palladiumCoatMost,
  silverCoatLeast,
  silverCoatMost,
  tinCoatingLeast,
  tinCoatingMost,
} from '@/shared/plan/limits/finishes'
import { leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import type { Ruling } from '@/shared/plan/requirement'
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
    least: tinCoatingLeast,
    most: tinCoatingMost,
    silverLeast: silverCoatLeast,
    silverMost: silverCoatMost,
    palladiumLeast: palladiumCoatLeast,
    palladiumMost: palladiumCoatMost,
  },
  judge({ finishes, ...limits }) {
    const windows: Windows = {
      tin: { name: 'tin or tin-lead', least: limits.least, most: limits.most },
      silver: { name: 'silver', least: limits.silverLeast, most: limits.silverMost },
      palladium: { name: 'palladium', least: limits.palladiumLeast, most: limits.palladiumMost },
    }
    const judged = finishes.flatMap((row, index) => {
      const kind = kindOf(row)
      return kind ? [{ kind, part: judgeRow(row, index, windows[kind]) }] : []
    })
    if (judged.length === 0) return notApplicable('No lead is coated with tin, solder, silver or palladium.')
    const used = [...new Set(judged.map(({ kind }) => kind))].map((kind) => windows[kind])
    const limit = used.map(inWords).join('; ')
    const parts = judged.map(({ part }) => part)
    const sources = used.map(({ least }) => least.limit.byDefault.from)
    return judgedByParts({
      parts,
      noun: 'coated leads',
      limit,
      working: [{ label: 'Window', result: limit }],
      sources,
      notes: [
        'Qualified components may carry less hot-dipped coat (1.5 to 5 µm, MIL-PRF-38535K, Table A-III): let the programme’s requirement say so where it applies.',
        ...(windows.palladium.least.kind === 'default' && judged.some(({ kind }) => kind === 'palladium')
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
  readonly least: Ruling
  readonly most: Ruling
}
type CoatKind = 'tin' | 'silver' | 'palladium'
type Windows = Readonly<Record<CoatKind, Window>>

/** Which window a coating is held to; gold is judged by itself. */
function kindOf({ coating: key }: LeadFinish): CoatKind | undefined {
  const { tinWindow, metal } = LEAD_COATINGS[key]
  if (tinWindow) return 'tin'
  return metal === 'silver' || metal === 'palladium' ? metal : undefined
}

const inWords = ({ name, least, most }: Window): string =>
  `${formatQuantity(least.value, '1')} to ${formatQuantity(most.value, 'µm')} of ${name} (${[...new Set([least.document, most.document])].join('; ')})`

function judgeRow(row: LeadFinish, index: number, { least, most }: Window): Part {
  // What is ordered may equal the limit: the lot's own thickness is judged when it comes.
  const common = { unit: 'µm', guardBand: 0 } as const
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
