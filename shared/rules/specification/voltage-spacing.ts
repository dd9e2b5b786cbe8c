import { SPACING_TABLES, type SpacingEdition } from '@/shared/materials/conductor-spacings'
import { minSpacingMm } from '@/shared/physics/conductor-spacing'
import { voltageSpacingGuard } from '@/shared/plan/limits/specification-guards'
import { WIDEST_GAP_MM, spacingEdition, spacings, type SpacingRow } from '@/shared/plan/parameters/spacings'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { decidingPart, judgedByParts, partOn } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'

const GAP_STEP_MM = 0.05
/** Where the tables end and their rows are carried on by so much a volt. */
const TABLE_ENDS_V = 500

export const voltageSpacing = rule({
  id: 'voltage-spacing',
  title: 'Spacing for voltage',
  why: 'Conductors too close for their voltage leak or flash over when damp and dirt join in, long after the board left the bench.',
  formula: 'gap ≥ row of the table by voltage and category; above 500 V s(500 V) + (V − 500) · mm a volt',
  stage: 'specification',
  version: 1,
  reads: { spacings, edition: optional(spacingEdition), guard: voltageSpacingGuard },
  judge({ spacings: rows, edition, guard }) {
    const editions: readonly SpacingEdition[] = edition ? [edition] : ['ipc-2221', 'ipc-d-275']
    const parts = rows.map((row, index) => judgeRow(row, index, { editions, share: guard.value / 100 }))
    const deciding = decidingPart(parts)
    const row = deciding && rows[parts.indexOf(deciding)]
    const mains = rows.filter((each) => each.mains)
    return judgedByParts({
      parts,
      noun: 'spacings',
      limit: editions.map((key) => SPACING_TABLES[key].label).join(' and '),
      working: row ? workingOf(row, editions) : [],
      sources: editions.map((key) => SPACING_TABLES[key].source),
      notes: [
        ...(edition ? [] : ['No edition is chosen: the larger spacing of both tables applies.']),
        'Letters are those of IPC-2221A/B; IPC-2221C (2023) gives B4, A6 and A7 other meanings.',
        ...(rows.some((each) => each.peakV > TABLE_ENDS_V)
          ? ['Above 500 V the last row is carried on by a fixed amount a volt.']
          : []),
      ],
      ...(mains.length > 0 && { cautions: [mainsCaution(mains)] }),
    })
  },
})

const mainsCaution = (rows: readonly SpacingRow[]): string =>
  `Mains at ${rows.map((row) => row.between).join(', ')}: this table is for function and is no safety standard. Insulation that people rely on needs clearance and creepage by the product’s safety standard (such as IEC 60664-1), altitude and pollution included, judged by a competent person under local codes.`

/** The edition that asks most. */
const strictest = (row: SpacingRow, editions: readonly SpacingEdition[]) =>
  editions
    .map((key) => ({ key, minMm: minSpacingMm(SPACING_TABLES[key], row.category, row.peakV) }))
    .reduce((max, other) => (other.minMm > max.minMm ? other : max))

interface Terms {
  readonly editions: readonly SpacingEdition[]
  /** Of the limit, kept free. */
  readonly share: number
}

function judgeRow(row: SpacingRow, index: number, { editions, share }: Terms): Part {
  const { key, minMm } = strictest(row, editions)
  const limit = Number(minMm.toFixed(7))
  const part = partOn({
    subject: row.between,
    measured: { voltage: measure(row.peakV, 'V'), category: row.category, edition: key },
    found: `${formatQuantity(row.gapMm, 'mm')} at ${formatQuantity(row.peakV, 'V')}, ${row.category} asks ${formatQuantity(limit, 'mm')} (${SPACING_TABLES[key].label})`,
    margin: { found: row.gapMm, limit, unit: 'mm', direction: 'at least', guardBand: share * limit },
  })
  if (part.verdict === 'meets') return part
  const value = stepAbove(limit * (1 + share), GAP_STEP_MM)
  if (value > WIDEST_GAP_MM) {
    const message = `${row.between}: no gap on a board is wide enough: keep the voltage off the board, coat or encapsulate it, or part the two by a barrier.`
    return { ...part, remedy: { message } }
  }
  const remedy: Remedy = {
    message: `${row.between}: open the gap to ${formatQuantity(value, 'mm')}.`,
    cell: { parameter: spacings.key, row: index, column: 'gapMm', value },
  }
  return { ...part, remedy }
}

function workingOf(row: SpacingRow, editions: readonly SpacingEdition[]): WorkingLine[] {
  return editions.map((key) => {
    const table = SPACING_TABLES[key]
    const result = formatQuantity(minSpacingMm(table, row.category, row.peakV), 'mm')
    if (row.peakV <= TABLE_ENDS_V) {
      const upToV = table.rows.find((each) => row.peakV <= each.upToV)?.upToV ?? TABLE_ENDS_V
      return { label: table.label, formula: `row up to ${upToV} V, column ${row.category}`, result }
    }
    return {
      label: table.label,
      formula: 's(500 V) + (V − 500) · millimetres a volt',
      numbers: `${minSpacingMm(table, row.category, TABLE_ENDS_V)} + (${formatQuantity(row.peakV, '1')} − 500) · ${table.perVoltMm[row.category]}`,
      result,
    }
  })
}
