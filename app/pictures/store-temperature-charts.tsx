import { Curves } from '@/app/drawing/curves'
import { growthBand } from '@/shared/physics/intermetallic'
import { formatQuantity } from '@/shared/quantity/format'
import { drawnMonths } from './coating-left-chart'
import { leftUm, monthsUntil, type AlikeCoats } from './coats-in-store'

interface ChartProps extends AlikeCoats {
  temperatureC: number
  minUm: number
}

const STEPS = 60
const ROUND_C = [10, 20, 30, 40, 50]
/** Round temperatures nearer than this to the store's own are left out. */
const APART_K = 4

const temperaturesAround = (storeC: number): number[] =>
  [...ROUND_C.filter((each) => Math.abs(each - storeC) >= APART_K), storeC].toSorted((a, b) => a - b)

/** The judged, fastest growth in warmer and cooler stores. */
export function CoatingLeftByTemperature({ subjects, coat, months, temperatureC, minUm }: ChartProps) {
  const until = drawnMonths(months)
  const times = Array.from({ length: STEPS + 1 }, (_, step) => (until * step) / STEPS)
  const temperatures = temperaturesAround(temperatureC)
  return (
    <Curves
      title={`${subjects.join(', ')}: warmer and cooler stores`}
      description={`Coating left by the fastest published growth at ${temperatures.join(', ')} °C over ${formatQuantity(until, 'months')}.`}
      across={{ label: 'In store', unit: 'months', from: 0, to: until }}
      up={{ label: 'Left by the fastest growth', unit: 'µm', from: 0, to: coat.coatingUm * 1.05 }}
      curves={temperatures.map((each) => ({
        name: formatQuantity(each, '°C'),
        heavy: each === temperatureC,
        points: times.map((time) => [time, leftUm(coat, growthBand(each).fastest, time)] as const),
      }))}
      limits={[{ y: minUm, name: `at least ${formatQuantity(minUm, 'µm')}`, beyond: 'below' }]}
      upright={{ x: months, name: 'as specified' }}
      marginValue={60}
      numbersPlace="beside"
      numbers={{
        columns: [
          { label: 'Store' },
          { label: `Left after ${formatQuantity(months, 'months')}` },
          { label: `Months until ${formatQuantity(minUm, 'µm')} is left` },
        ],
        rows: temperatures.map((each) => {
          const { fastest, slowest } = growthBand(each)
          return [
            formatQuantity(each, '°C'),
            `${formatQuantity(leftUm(coat, fastest, months), 'µm', 2)} to ${formatQuantity(leftUm(coat, slowest, months), 'µm', 2)}`,
            `${inMonths(monthsUntil(coat, minUm, fastest))} to ${inMonths(monthsUntil(coat, minUm, slowest))}`,
          ]
        }),
      }}
      note="In the table: from the fastest to the slowest growth that publications leave."
    />
  )
}

/** Centuries are extrapolated beyond any measurement. */
const MAX_TOLD = 600
const inMonths = (months: number): string =>
  months > MAX_TOLD ? 'over 50 years' : formatQuantity(months, '1', 2)
