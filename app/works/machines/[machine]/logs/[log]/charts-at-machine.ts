import type { MachineLogView } from '@/lib/queries/works/machine-log'
import { specifiedChart } from '@/shared/charts/chart-choice'
import { logChart, specifiedCharting, type LogChart } from '@/shared/charts/log-chart'
import { USUAL_RUN_RULES } from '@/shared/charts/run-rule-sets'
import { windowOfLog } from '@/shared/logs/log-window'
import type { RecordOf } from '@/shared/records/record-kinds'

/** A chart of the whole log, and the programmes that specify it so; none where no programme reads the log. */
export interface ChartAtMachine {
  readonly programmes: readonly string[]
  readonly chart: LogChart
}

/**
 * The charts of all readings of a machine's log, each way of charting and each window once, with its programmes; by the
 * resets of the machine alone where no programme reads it. At least one.
 */
export function chartsAtMachine(
  { log, readBy }: Pick<MachineLogView, 'log' | 'readBy'>,
  resets: readonly RecordOf<'chart-reset'>[],
): readonly ChartAtMachine[] {
  if (readBy.length === 0) {
    const choice = specifiedChart(log, undefined, undefined, resets)
    return [{ programmes: [], chart: logChart(log, undefined, { choice, rules: USUAL_RUN_RULES }) }]
  }
  const ways = new Map<string, MachineLogView['readBy'][number][]>()
  for (const reader of readBy) {
    const { facts } = reader.judged.state
    const way = JSON.stringify([
      specifiedCharting(reader.log, facts),
      windowOfLog(log.characteristic, facts) ?? null,
    ])
    ways.set(way, [...(ways.get(way) ?? []), reader])
  }
  return [...ways.values()].map((alike) => {
    const [first] = alike as [MachineLogView['readBy'][number]]
    return {
      programmes: alike.map(({ judged }) => judged.state.programme.code),
      // By the programme's name of the log, as its resets name it.
      chart: logChart({ ...log, code: first.log.code }, first.judged.state.facts),
    }
  })
}
