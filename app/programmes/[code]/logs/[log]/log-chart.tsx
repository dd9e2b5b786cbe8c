import { LogOverTime } from '@/app/drawing/log-over-time'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
import { logChart } from '@/shared/rules/control/log-chart'
import { FEWEST_TO_CHART } from '@/shared/rules/control/log-signals'
import { windowInWords } from '@/shared/rules/control/logged-window'
import { fluxDensity } from '@/shared/records/characteristics/flux-density'
import type { Facts } from '@/shared/rules/facts'
import { signalStates, type SignalState } from '../log-state'
import { CorrectedDensity } from './corrected-density'

interface LogChartProps {
  log: Log
  characteristic: Characteristic
  facts: Facts
}

/** A log over time, with control limits estimated from its own readings and the limits of the specification. */
export function LogChart({ log, characteristic, facts }: LogChartProps) {
  const column = characteristic.columns[characteristic.charted]
  const { readings, chart, window } = logChart(log, facts)
  if (readings.length === 0 || column?.kind !== 'number')
    return <Empty title="No readings yet">Type one in, or import a CSV file, below.</Empty>
  const states = signalStates(log, facts)
  const drawn = signalsToDraw(states)
  const [centre, lower, upper] = [chart?.centre[0], chart?.lower[0], chart?.upper[0]]
  return (
    <Section
      heading="Chart"
      lead={
        <>
          {chart
            ? 'Individuals chart; centre and control limits estimated from these readings and their moving range, signals by the zone rules of the Western Electric handbook (1956).'
            : readings.length < FEWEST_TO_CHART
              ? `Control limits are drawn from ${FEWEST_TO_CHART} readings on.`
              : 'All readings are alike: no control limits can be drawn.'}{' '}
          {window && `Specified: ${windowInWords(window)}`}
        </>
      }
    >
      <LogOverTime
        title={`${log.code} over time`}
        characteristic={column.label}
        unit={column.unit}
        readings={readings}
        signals={drawn.map(({ signal: { instant, value, says } }) => ({ at: instant, value, says }))}
        specification={{
          ...(window?.least && { atLeast: window.least.value }),
          ...(window?.most && { atMost: window.most.value }),
        }}
        {...(centre !== undefined && {
          centre,
          control: { ...(lower !== undefined && { lower }), ...(upper !== undefined && { upper }) },
        })}
      />
      {drawn.length < states.length && (
        <p className="field-hint">
          {states.length - drawn.length} signals that this programme does not ask about are not drawn.
        </p>
      )}
      {log.characteristic === fluxDensity.key && <CorrectedDensity log={log} facts={facts} />}
    </Section>
  )
}

const MOST_DRAWN = 60

/** All signals while they can be told apart; of too many, those the programme asks about, the newest first. */
function signalsToDraw(states: readonly SignalState[]): readonly SignalState[] {
  return states.length <= MOST_DRAWN ? states : states.filter(({ asked }) => asked).slice(-MOST_DRAWN * 4)
}
