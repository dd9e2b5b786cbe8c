import { FEWEST_TO_CHART } from '@/shared/charts/chart-stretches'
import { chartInWords, limitsInWords } from '@/shared/charts/chart-words'
import { PANEL_KINDS } from '@/shared/charts/kinds/panel-kinds'
import type { LogChart } from '@/shared/charts/log-chart'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import { windowInWords } from '@/shared/logs/logged-window'

/** What stands above a log's chart: which it is, where its limits come from, what it leaves out; or why there is none. */
export function chartLead({ panels, choice, rules, series, leftOut, window }: LogChart): string {
  const [first] = panels
  const said = first
    ? [
        `${chartInWords(choice)}.`,
        `Limits ${first.phases.map((phase) => (first.phases.length > 1 ? `${phase.name}: ${limitsInWords(phase)}` : limitsInWords(phase))).join('; ')}.`,
        PANEL_KINDS[first.kind].byRunRules && `Signals by the ${RUN_RULE_SETS[rules].name}.`,
        leftOut > 0 && `${leftOut} readings make up no whole subgroup and are left out.`,
      ]
    : [
        series.values.length < FEWEST_TO_CHART
          ? `Control limits are drawn from ${FEWEST_TO_CHART} readings on.`
          : series.values.every((value) => value === series.values[0])
            ? 'All readings are alike: no control limits can be drawn.'
            : `No whole subgroup of ${choice.subgroup} readings: the readings are shown as they are.`,
      ]
  return [...said, window && `Specified: ${windowInWords(window)}`].filter(Boolean).join(' ')
}

/** The specified window as a plot of readings draws it. */
export const windowDrawn = ({ window }: LogChart): { atLeast?: number; atMost?: number } => ({
  ...(window?.min && { atLeast: window.min.value }),
  ...(window?.max && { atMost: window.max.value }),
})
