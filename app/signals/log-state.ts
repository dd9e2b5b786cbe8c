import { isLevel } from '@/shared/logs/level-characteristics'
import type { Log } from '@/shared/records/log'
import { answerTo, type SignalAnswer } from '@/shared/logs/signal-answers'
import { logChart, type LogSignal } from '@/shared/charts/log-chart'
import type { Facts } from '@/shared/rules/facts'
import type { Finding, Part, Verdict } from '@/shared/rules/finding'
import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** A signal with the answer recorded for it, and whether the programme asks for one. */
export interface SignalState {
  readonly signal: LogSignal
  readonly answer: SignalAnswer | undefined
  readonly asked: boolean
}

/** Every signal of a log's chart as specified, oldest first. Of what keeps no level none is asked about. */
export function signalStates(log: Log, facts: Facts): SignalState[] {
  const answers = recordsOfKind(facts.records, 'signal-answer')
  const level = isLevel(log.characteristic)
  return logChart(log, facts).signals.map((signal) => ({
    signal,
    answer: answerTo(answers, { log: log.code, chartRule: signal.chartRule, instant: signal.instant }),
    asked: level && signal.asked,
  }))
}

/** Signals that still need a cause before the gate. */
export const openSignals = (states: readonly SignalState[]): number =>
  states.filter(({ asked, answer }) => asked && !answer).length

/** A rule that reads logs of one characteristic, with its finding and the part of it that is about this log. */
export interface LogReading {
  readonly rule: AnyRule
  readonly finding: Finding
  readonly part: Part | undefined
}

/** Every finding of the plan that reads this log. */
export function findingsReading(
  log: Log,
  rules: readonly AnyRule[],
  findings: ReadonlyMap<string, Finding>,
): LogReading[] {
  const seen = new Set<string>()
  return rules.flatMap((rule) => {
    const finding = findings.get(rule.id)
    const reads = Object.values(rule.reads).map((read) => readableOf(read).key)
    const own = reads.includes(`logs:${log.characteristic}`)
    const part = finding?.parts?.find(({ about }) => about?.['log'] === log.code)
    if (!finding || seen.has(rule.id) || !(own || (reads.includes('logs') && part))) return []
    seen.add(rule.id)
    return [{ rule, finding, part }]
  })
}

/** What is said of this log, or of all logs of its kind where the rule does not tell them apart. */
export const verdictOf = ({ part, finding }: LogReading): Verdict => part?.verdict ?? finding.verdict
