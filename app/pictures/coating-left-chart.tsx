import { Curves } from '@/app/drawing/curves'
import { GROWTH_LAWS, type GrowthLaw } from '@/shared/materials/growth-laws'
import { growthBand, growthConstant } from '@/shared/physics/intermetallic'
import { formatQuantity } from '@/shared/quantity/format'
import { leftUm, type AlikeCoats } from './coats-in-store'

interface ChartProps extends AlikeCoats {
  temperatureC: number
  minUm: number
}

const STEPS = 60
/** Months that the table names, as shares of the time drawn. */
const TOLD = [0, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1]

/** What is left of a coating at the store's temperature: each published law, and the span they leave. */
export function CoatingLeftAtStore({ subjects, coat, months, temperatureC, minUm }: ChartProps) {
  const until = drawnMonths(months)
  const band = growthBand(temperatureC)
  const laws: readonly GrowthLaw[] = Object.values(GROWTH_LAWS)
  const times = Array.from({ length: STEPS + 1 }, (_, step) => (until * step) / STEPS)
  const um = (value: number): string => formatQuantity(value, 'µm', 2)
  const told = [...new Set([...TOLD.map((share) => share * until), months])].toSorted((a, b) => a - b)
  return (
    <Curves
      title={`${subjects.join(', ')}: coating left at ${formatQuantity(temperatureC, '°C')}`}
      description={`Sound coating left of ${formatQuantity(coat.coatingUm, 'µm')} over ${formatQuantity(until, 'months')}: after ${formatQuantity(months, 'months')} between ${um(leftUm(coat, band.fastest, months))} and ${um(leftUm(coat, band.slowest, months))}; at least ${um(minUm)} is asked.`}
      across={{ label: 'In store', unit: 'months', from: 0, to: until }}
      up={{ label: 'Sound coating left', unit: 'µm', from: 0, to: coat.coatingUm * 1.05 }}
      bands={[
        {
          name: 'span of the published laws',
          points: times.map((time) => [
            time,
            leftUm(coat, band.fastest, time),
            leftUm(coat, band.slowest, time),
          ]),
        },
      ]}
      curves={laws.map((law) => ({
        name: law.short,
        heavy: law.attributed,
        points: times.map((time) => [time, leftUm(coat, growthConstant(law, temperatureC), time)] as const),
      }))}
      limits={[{ y: minUm, name: `at least ${um(minUm)}`, beyond: 'below' }]}
      upright={{ x: months, name: 'as specified' }}
      numbersPlace="beside"
      numbers={{
        columns: [
          { label: 'In store' },
          { label: 'Slowest', set: 'text' },
          ...laws.map((law) => ({ label: law.short, set: 'text' as const })),
          { label: 'Fastest', set: 'text' },
        ],
        rows: told.map((time) => [
          formatQuantity(time, 'months', 3),
          um(leftUm(coat, band.slowest, time)),
          ...laws.map((law) => um(leftUm(coat, growthConstant(law, temperatureC), time))),
          um(leftUm(coat, band.fastest, time)),
        ]),
      }}
      note="Shaded: the span that all sets leave. Its fast edge is judged: the fastest set whose author can be followed, at the peaks of the compound. Heavy: the sets that may decide."
    />
  )
}

/** Long enough to see where it would end: twice what is specified, two years at least. */
export const drawnMonths = (months: number): number => Math.max(24, 2 * months)
