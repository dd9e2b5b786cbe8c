import { signalStates } from '@/app/signals/log-state'
import { excursionsOf } from '@/app/signals/excursions'
import type { MachineLogView } from '@/lib/queries/works/machine-log'
import { readingText } from '@/shared/charts/log-chart'
import { OUTSIDE_WINDOW, type SignalAnswer } from '@/shared/logs/signal-answers'

/** A signal that one or more programmes have of a shared log. */
export interface SharedSignal {
  readonly chartRule: string
  readonly readingAt: string
  readonly message: string
  readonly programmes: readonly string[]
  readonly answer: SignalAnswer | undefined
  readonly asked: boolean
}

/** The signals of all programmes that read a log, each once: those that want an answer first, the newest first in each. */
export function signalsOfAll(readBy: MachineLogView['readBy']): SharedSignal[] {
  const found = new Map<string, SharedSignal>()
  for (const reader of readBy)
    for (const signal of signalsOf(reader)) {
      const key = `${signal.chartRule} ${signal.readingAt}`
      const known = found.get(key)
      found.set(
        key,
        known
          ? {
              ...known,
              programmes: [...known.programmes, ...signal.programmes],
              asked: known.asked || signal.asked,
              answer: known.answer ?? signal.answer,
            }
          : signal,
      )
    }
  const urgency = ({ answer, asked }: SharedSignal): number => (answer ? 0 : asked ? 2 : 1)
  return [...found.values()].sort(
    (one, other) => urgency(other) - urgency(one) || (one.readingAt < other.readingAt ? 1 : -1),
  )
}

function signalsOf({ judged: { state }, log }: MachineLogView['readBy'][number]): SharedSignal[] {
  const { programme, facts } = state
  const charted = signalStates(log, facts).map(({ signal, answer, asked }) => ({
    chartRule: signal.chartRule,
    readingAt: signal.readingAt,
    message: signal.message,
    programmes: [programme.code],
    answer,
    asked,
  }))
  const outside = excursionsOf(log, facts).map(({ instant, readings, answer }) => ({
    chartRule: OUTSIDE_WINDOW,
    readingAt: readingText(instant),
    message: readings === 1 ? 'outside the window' : `outside the window, ${readings} readings`,
    programmes: [programme.code],
    answer,
    asked: true,
  }))
  return [...charted, ...outside]
}
