import { Curves } from '@/app/drawing/curves'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { LAMINATES, type Laminate } from '@/shared/materials/laminates'
import { throughExpansionPct } from '@/shared/physics/solder-exposure'
import {
  boardThickness,
  glassTransition,
  laminate,
  serviceTemperature,
  solderExposures,
} from '@/shared/plan/parameters/laminate'
import { formatQuantity } from '@/shared/quantity/format'
import { valueOf } from './value-of'

const FROM_C = 20
const STEPS = 48

/** How much the laminate grows through its thickness as it warms, with the knee at its glass transition. */
export function ExpansionChart({ view }: { view: ProgrammeView }) {
  const key = valueOf(view, laminate)
  if (!key) return null
  const grade: Laminate = LAMINATES[key]
  const rates = grade.throughExpansionPpmK
  if (!rates) return null
  const transitionC = valueOf(view, glassTransition) ?? grade.glassTransitionC
  const serviceC = valueOf(view, serviceTemperature)
  const exposures = valueOf(view, solderExposures) ?? []
  const hottestC = Math.max(260, ...exposures.map(({ temperatureC }) => temperatureC))
  const boardMm = valueOf(view, boardThickness)
  const at = (warmC: number): number => throughExpansionPct(rates, transitionC, warmC)
  const told = [
    ...(serviceC === undefined ? [] : [{ name: 'in service', warmC: serviceC }]),
    { name: 'glass transition', warmC: transitionC },
    { name: 'hottest soldering', warmC: hottestC },
  ].filter(({ warmC }) => warmC >= FROM_C)
  return (
    <Curves
      title={`${grade.label}: growth through the thickness`}
      description={`Growth from ${FROM_C} °C: ${told.map(({ name, warmC }) => `${formatQuantity(at(warmC), '%', 2)} at ${formatQuantity(warmC, '°C')} (${name})`).join(', ')}. The barrels are drawn along.`}
      across={{ label: 'Laminate', unit: '°C', from: FROM_C, to: Math.max(hottestC, transitionC) * 1.04 }}
      up={{
        label: 'Growth in thickness',
        unit: '%',
        from: 0,
        to: at(Math.max(hottestC, transitionC)) * 1.15,
      }}
      curves={[
        {
          name: 'growth',
          heavy: true,
          points: Array.from({ length: STEPS + 1 }, (_, step) => {
            const warmC = FROM_C + ((hottestC - FROM_C) * step) / STEPS
            return [warmC, at(warmC)] as const
          }),
        },
      ]}
      points={told.map(({ name, warmC }) => ({ x: warmC, y: at(warmC), name }))}
      marginValue={64}
      numbersPlace="beside"
      numbers={{
        columns: [{ label: 'At' }, { label: 'Laminate' }, { label: 'Growth' }, { label: 'Of the board' }],
        rows: told.map(({ name, warmC }) => [
          name,
          formatQuantity(warmC, '°C'),
          formatQuantity(at(warmC), '%', 2),
          boardMm === undefined ? '–' : formatQuantity((at(warmC) / 100) * boardMm * 1000, 'µm', 2),
        ]),
      }}
      note={`${rates.below} ppm/K below the glass transition and ${rates.above} above it, if the board warms through.`}
    />
  )
}
