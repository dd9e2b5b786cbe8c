import { judgeAll, type Judging } from '@/shared/rules/judge-all'
import type { Finding } from '@/shared/rules/finding'
import { GATE_STANDINGS, gateStatesOf, type GateState } from './gate'
import type { ProgrammeState } from './programme-state'
import { itemStateOf, type ItemState } from './item-status'

/** Everything derived from a programme's facts, in one piece. */
export interface Judgement {
  readonly judging: Judging
  readonly findings: ReadonlyMap<string, Finding>
  readonly items: readonly ItemState[]
  readonly gates: readonly GateState[]
  /** The assessment gate has been signed, whether or not it still stands. */
  readonly inService: boolean
}

/** Judges a programme; with an earlier judgement, only what a change reaches is judged again. */
export function judgeProgramme(state: ProgrammeState, before?: Judgement): Judgement {
  const rules = state.items.flatMap(({ definition }) => definition.rules)
  const judging = judgeAll(rules, state.facts, before?.judging)
  const known = new Map(before?.items.map((entry) => [entry.item.definition.key, entry]))
  const items = state.items.map((item) =>
    itemStateOf(item, state, judging.findings, known.get(item.definition.key)),
  )
  const gates = gateStatesOf(state, items, judging.findings)
  const last = gates.at(-1)
  const inService = last !== undefined && GATE_STANDINGS[last.status].wasOpen
  return { judging, findings: judging.findings, items, gates, inService }
}

export const itemStateFor = (judgement: Judgement, key: string): ItemState | undefined =>
  judgement.items.find(({ item }) => item.definition.key === key)

export const gateFor = (judgement: Judgement, stage: string): GateState | undefined =>
  judgement.gates.find((gate) => gate.stage === stage)
