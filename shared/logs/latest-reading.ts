import type { Verdict } from '@/shared/rules/finding'
import type { Facts } from '@/shared/rules/facts'
import type { Unit } from '@/shared/quantity/unit'
import type { Log } from '@/shared/records/log'
import { chartedInputs, chartedSeries } from './charted-series'
import { windowOfLog } from './log-window'
import { marginIn, type ProcessWindow } from './logged-window'

/** The newest reading of a shared log, held against what one programme specifies. */
export interface ReadingAgainst {
  readonly programme: string
  readonly window: ProcessWindow
  /** What is charted of it, as this programme has it charted. */
  readonly value: number
  readonly unit: Unit
  readonly verdict: Verdict
}

/** The last reading of a log against each programme that specifies a window for it, in the programmes' order. */
export function latestAgainst(
  log: Log,
  programmes: readonly { readonly programme: string; readonly facts: Facts }[],
): ReadingAgainst[] {
  return programmes.flatMap(({ programme, facts }) => {
    const window = windowOfLog(log.characteristic, facts)
    const charted = window && chartedSeries(log, chartedInputs(facts))
    const value = charted?.series.values.at(-1)
    if (!window || !charted || value === undefined) return []
    return [{ programme, window, value, unit: charted.unit, verdict: marginIn(window, value).verdict }]
  })
}
