import type { Chart } from '@/shared/statistics/charts/chart'
import { judgeChart } from '@/shared/statistics/run-rules/judged-chart'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import type { ChartPanel } from '../chart-panel'
import { PANEL_KINDS, type PanelKindKey } from './panel-kinds'

/** A chart of those instants as a plot, with the signals that run rules find on it. */
export function panelOfChart(
  kind: PanelKindKey,
  chart: Chart,
  instants: readonly number[],
  rules: readonly RunRule[],
  asked = true,
): ChartPanel {
  const { signals, rulesNotRun } = judgeChart({ ...chart, behaviour: PANEL_KINDS[kind].behaviour }, rules)
  const words = new Map(rules.map(({ id, message }) => [id, message]))
  const { values, centre, lower, upper, phases, positions } = chart
  return {
    kind,
    instants:
      positions.length === instants.length
        ? instants
        : Array.from(positions, (position) => instants[position]!),
    lines: [values],
    centre,
    lower,
    upper,
    phases,
    signals: signals.map(({ ruleId, soundedAt }) => ({
      chartRule: kind === 'individuals' ? ruleId : `${kind}:${ruleId}`,
      ruleId,
      message: words.get(ruleId) ?? ruleId,
      point: soundedAt,
      line: 0,
    })),
    rulesNotRun,
    asked,
  }
}
