import type { ProcessWindow } from '@/shared/logs/logged-window'
import { capabilityStudy, type CapabilityStudy } from '@/shared/statistics/capability/study'
import { sigmaFromMovingRange } from '@/shared/statistics/capability/within-sigma'
import { phaseStarts } from './chart-stretches'
import type { Series } from '@/shared/logs/log-series'
import { askedSignals, type Charting } from './log-chart'

/** Fewer readings leave so wide a bound that the index says nothing. */
export const FEWEST_FOR_CAPABILITY = 20

/** Capability of a log against its window, with the signals that say it was not steady. */
export interface LogCapability {
  readonly study: CapabilityStudy
  readonly signals: number
}

/** The readings since the newest reset; all of them where the log has none. */
export interface NewestStretch extends Series {
  /** What began; undefined where nothing did. */
  readonly since: string | undefined
}

/** What speaks for the process as it runs now: readings from before a known and lasting change do not. */
export function newestStretch(
  { instants, values, log }: Series,
  { choice }: Pick<Charting, 'choice'>,
): NewestStretch {
  const { from, name } = phaseStarts({ instants, log }, choice.phases).at(-1)!
  return from === 0
    ? { instants, values, since: undefined }
    : { instants: instants.slice(from), values: values.slice(from), since: name }
}

/**
 * The capability of readings against a window at a one-sided confidence (a
 * fraction). The readings are steady when none of the run rules that the
 * programme chose signals on the chart it chose. Undefined with too few
 * readings, without spread, or without a limit.
 */
export function capabilityOf(
  stretch: Series,
  { min, max }: ProcessWindow,
  { choice, rules }: Charting,
  confidence: number,
): LogCapability | undefined {
  const { values } = stretch
  if (values.length < FEWEST_FOR_CAPABILITY || (!min && !max)) return undefined
  if (min && max && !(min.value < max.value)) return undefined
  const within = sigmaFromMovingRange(values)
  if (!(within.sigma > 0)) return undefined
  const signals = askedSignals(stretch, { choice: { ...choice, phases: [] }, rules }).length
  const study = capabilityStudy({
    values,
    within,
    limits: { lower: min?.value, upper: max?.value },
    stability: signals === 0 ? 'stable' : 'unstable',
    confidence,
  })
  return { study, signals }
}

/**
 * How many readings in all would show an index of at least `min`, if the
 * process stays as it is: the bound's distance falls with the root of their
 * number. Infinite where the estimate itself does not clear it.
 */
export const readingsToShow = (
  { index, lowerBound, readings }: { index: number; lowerBound: number; readings: number },
  min: number,
): number => (index > min ? Math.ceil(readings * ((index - lowerBound) / (index - min)) ** 2) : Infinity)
