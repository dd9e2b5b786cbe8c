import type { ReactNode } from 'react'
import { ProfilePlot } from '@/app/drawing/profile-plot'
import type { Numbers } from '@/app/drawing/numbers-table'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import { marginIn, type ProcessWindow } from '@/shared/logs/logged-window'
import { profileSummary, SLOPE_WINDOW_S, SOAK } from '@/shared/profiles/profile-summary'
import { profileReads, profileWindows, type ProfileWindows } from '@/shared/profiles/profile-windows'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { NothingRead } from './nothing-read'

/** One pass of a measured board, drawn against the window of its solder, with each thermocouple's terms. */
export function ThermalProfile({ log, facts }: { log: Log; facts: Facts }) {
  const inputs = inputsOf(profileReads, facts)
  if (!inputs)
    return (
      <Empty title="No window yet">The alloy family of the programme decides the window of a profile.</Empty>
    )
  const windows = profileWindows(inputs)
  const summary = profileSummary(log, windows.liquidusC)
  if (!summary) return <NothingRead log={log} title="No profile yet" />
  const reflowed = inputs.process === undefined || inputs.process === 'reflow'
  return (
    <Section
      id="chart"
      heading="Profile"
      lead={
        reflowed
          ? `Requirement: peak ${spanInWords(windows.peak)}; ${spanInWords(windows.aboveLiquidus)} above ${formatQuantity(windows.liquidusC, '°C')}${windows.soak ? `; soak ${spanInWords(windows.soak)}` : ''}; rise ${spanInWords(windows.rise)}; ${spanInWords(windows.spread)} across the board. Whose limits these are is said below.`
          : 'No board is reflowed in this programme: the pass is drawn without a window.'
      }
    >
      <ProfilePlot
        title={`${log.code}: one pass of the board`}
        liquidusC={windows.liquidusC}
        traces={summary.couples.map(({ name, trace, peakC, peakAtS }) => ({
          tag: name,
          name,
          ...trace,
          peakC,
          peakAtS,
        }))}
        {...(reflowed && windows.soak && { soak: SOAK })}
        {...(reflowed && {
          peak: { atLeast: windows.peak.min?.value, atMost: windows.peak.max?.value },
        })}
        numbers={numbersOf(summary, reflowed ? windows : undefined)}
      />
      <p className="field-hint">
        {summary.greatestDifference &&
          `Greatest difference across the board at one time: ${formatQuantity(summary.greatestDifference.differenceK, 'K', 3)}, after ${formatQuantity(summary.greatestDifference.atS, 's')}. `}
        Slopes are taken over {SLOPE_WINDOW_S} s or more; times are interpolated between samples.
      </p>
    </Section>
  )
}

/** "205 °C to 225 °C", "at most 3 K/s". */
function spanInWords({ min, max, unit }: ProcessWindow): string {
  if (min && max) return `${formatQuantity(min.value, unit)} to ${formatQuantity(max.value, unit)}`
  return max ? `at most ${formatQuantity(max.value, unit)}` : `at least ${formatQuantity(min!.value, unit)}`
}

type Summary = NonNullable<ReturnType<typeof profileSummary>>

function numbersOf({ couples, peakSpreadK }: Summary, windows: ProfileWindows | undefined): Numbers {
  const judged = (
    key: string,
    found: number,
    window: ProcessWindow | undefined,
    unit: ProcessWindow['unit'],
  ) => cell(key, measured(found, unit), window && marginIn(window, found).verdict)
  return {
    columns: [
      { label: 'Place' },
      { label: 'Steepest rise', set: 'text' },
      { label: `Soak, ${SOAK.fromC} to ${SOAK.toC} °C`, set: 'text' },
      { label: 'Peak', set: 'text' },
      { label: 'Peak after' },
      { label: 'Above liquidus', set: 'text' },
      { label: 'Steepest fall', set: 'text' },
    ],
    rows: [
      ...couples.map((couple) => [
        couple.name,
        judged('rise', couple.steepestRiseKPerS, windows?.rise, 'K/s'),
        judged('soak', couple.soakS, windows?.soak, 's'),
        judged('peak', couple.peakC, windows?.peak, '°C'),
        formatQuantity(couple.peakAtS, 's', 3),
        judged('above', couple.timeAboveLiquidusS, windows?.aboveLiquidus, 's'),
        judged('fall', couple.steepestFallKPerS, windows?.fall, 'K/s'),
      ]),
      ...(couples.length > 1
        ? [
            [
              'Difference across the board',
              spreadOf(
                couples.map(({ steepestRiseKPerS }) => steepestRiseKPerS),
                'K/s',
              ),
              spreadOf(
                couples.map(({ soakS }) => soakS),
                's',
              ),
              judged('spread', peakSpreadK, windows?.spread, 'K'),
              spreadOf(
                couples.map(({ peakAtS }) => peakAtS),
                's',
              ),
              spreadOf(
                couples.map(({ timeAboveLiquidusS }) => timeAboveLiquidusS),
                's',
              ),
              spreadOf(
                couples.map(({ steepestFallKPerS }) => steepestFallKPerS),
                'K/s',
              ),
            ],
          ]
        : []),
    ],
  }
}

const spreadOf = (values: readonly number[], unit: ProcessWindow['unit']): string =>
  measured(Math.max(...values) - Math.min(...values), unit)

/** A trace too short tells no slope. */
const measured = (found: number, unit: ProcessWindow['unit']): string =>
  Number.isNaN(found) ? 'not measured' : formatQuantity(found, unit, 3)

/** A value with its verdict where a window is asked. */
const cell = (
  key: string,
  text: string,
  verdict: ReturnType<typeof marginIn>['verdict'] | undefined,
): ReactNode =>
  verdict === undefined ? (
    text
  ) : (
    <span key={key} className="mark-row">
      {text} <VerdictMark verdict={verdict} />
    </span>
  )
