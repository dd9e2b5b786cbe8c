import { Curves, type Curve } from '@/app/drawing/curves'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import {
  SPACING_CATEGORIES,
  SPACING_TABLES,
  type SpacingCategory,
  type SpacingEdition,
} from '@/shared/materials/conductor-spacings'
import { minSpacingMm } from '@/shared/physics/conductor-spacing'
import { spacingEdition, spacings, type SpacingRow } from '@/shared/plan/parameters/spacings'
import { formatQuantity } from '@/shared/quantity/format'
import { valueOf } from './value-of'

const EDITIONS: readonly SpacingEdition[] = ['ipc-2221', 'ipc-d-275']
const SHORT = { 'ipc-2221': '2221', 'ipc-d-275': 'D-275' } as const satisfies Record<SpacingEdition, string>

/** Every listed gap against the least for its voltage, one chart a kind of spacing. */
export function SpacingCharts({ view }: { view: ProgrammeView }) {
  const rows = valueOf(view, spacings)
  if (!rows) return null
  const edition = valueOf(view, spacingEdition)
  const editions = edition ? [edition] : EDITIONS
  const categories = [...new Set(rows.map(({ category }) => category))].toSorted()
  return (
    <Section
      heading="Gaps against their voltage"
      lead="The least gap rises with the voltage in steps; above 500 V it is carried on by a fixed amount a volt."
    >
      <div className="picture-row">
        {categories.map((category) => (
          <SpacingChart
            key={category}
            category={category}
            editions={editions}
            rows={rows.filter((row) => row.category === category)}
          />
        ))}
      </div>
    </Section>
  )
}

interface SpacingChartProps {
  category: SpacingCategory
  editions: readonly SpacingEdition[]
  rows: readonly SpacingRow[]
}

const FROM_V = 1

function SpacingChart({ category, editions, rows }: SpacingChartProps) {
  const toV = Math.max(1000, ...rows.map(({ peakV }) => peakV * 1.2))
  const curves = editions.map((key): Curve => ({
    name: SHORT[key],
    heavy: key === 'ipc-2221',
    points: steps(key, category, toV),
  }))
  const gaps = [
    ...curves.flatMap(({ points }) => points.map(([, mm]) => mm)),
    ...rows.map(({ gapMm }) => gapMm),
  ]
  const mm = (value: number): string => formatQuantity(Number(value.toFixed(7)), 'mm')
  return (
    <Curves
      title={`${category}: ${SPACING_CATEGORIES[category]}`}
      description={`Least gap against voltage for ${category} by ${editions.map((key) => SPACING_TABLES[key].label).join(' and ')}, with ${rows.map(({ between }) => between).join(', ')} marked. A gap under a line is too small.`}
      across={{ label: 'Voltage, peak', unit: 'V', from: FROM_V, to: toV, log: true }}
      up={{ label: 'Gap', unit: 'mm', from: Math.min(...gaps) / 1.5, to: Math.max(...gaps) * 1.5, log: true }}
      curves={curves}
      points={rows.map(({ between, peakV, gapMm }) => ({
        x: Math.max(peakV, FROM_V),
        y: gapMm,
        name: between,
      }))}
      marginValue={60}
      numbersPlace="beside"
      numbers={{
        columns: [
          { label: 'Between' },
          { label: 'Voltage' },
          { label: 'Gap' },
          ...editions.map((key) => ({ label: `Least, ${SHORT[key]}` })),
        ],
        rows: rows.map(({ between, peakV, gapMm }) => [
          between,
          formatQuantity(peakV, 'V'),
          mm(gapMm),
          ...editions.map((key) => mm(minSpacingMm(SPACING_TABLES[key], category, peakV))),
        ]),
      }}
    />
  )
}

/** The table as the stairs it is, and its straight continuation. */
function steps(
  edition: SpacingEdition,
  category: SpacingCategory,
  toV: number,
): (readonly [number, number])[] {
  const table = SPACING_TABLES[edition]
  const starts = [FROM_V, ...table.rows.map(({ upToV }) => upToV)]
  const stairs = table.rows.flatMap((row, at) => [
    [starts[at] ?? FROM_V, row[category]] as const,
    [row.upToV, row[category]] as const,
  ])
  const [last] = [table.rows.at(-1)?.upToV ?? FROM_V]
  const beyond = Array.from({ length: 13 }, (_, step) => last * (toV / last) ** (step / 12))
  return [...stairs, ...beyond.map((volts) => [volts, minSpacingMm(table, category, volts)] as const)]
}
