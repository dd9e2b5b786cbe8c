import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { readOrigins } from '@/lib/queries/origins'
import { findLimit, findParameter, itemHolding } from '@/shared/catalogue/standard-plan'
import { parameterName } from '@/shared/commands/named'
import type { Limit } from '@/shared/plan/requirement'
import { findingChain, partsRead, readsOf } from '@/shared/why/finding-chain'
import { limitOrigin } from '@/shared/why/limit-origin'
import { idsTold } from '@/shared/why/record-origin'
import type { WhyStep } from '@/shared/why/step'
import { groundsOf, valueOrigin } from '@/shared/why/value-origin'

/** What a page of reasons is about, and its chain. */
interface Chain {
  readonly title: string
  readonly steps: readonly WhyStep[]
}

/** Why a finding is as it is; undefined when the programme's plan has no such rule. */
export async function whyFinding(view: ProgrammeView, id: string): Promise<Chain | undefined> {
  const { state, judgement } = view
  const item = state.items.find(({ definition }) => definition.rules.some((rule) => rule.id === id))
  const rule = item?.definition.rules.find((entry) => entry.id === id)
  if (!item || !rule) return undefined
  const keysOf = (source: 'parameter' | 'limit') =>
    readsOf(rule).flatMap((read) => (read.source === source ? [read.key] : []))
  const origins = await readOrigins(state.programme.id, {
    parameters: keysOf('parameter'),
    limits: keysOf('limit'),
    rows: partsRead(rule).flatMap((part) => idsTold(part, state.facts.records)),
  })
  return { title: rule.title, steps: findingChain(rule, item, state, judgement, origins) }
}

/** Why a value is specified as it is; undefined when there is no such parameter. */
export async function whyValue({ state }: ProgrammeView, key: string): Promise<Chain | undefined> {
  if (!findParameter(key)) return undefined
  const origins = await readOrigins(state.programme.id, { parameters: [key], limits: [], rows: [] })
  const item = itemHolding.parameter(key)?.key
  const grounds = item ? groundsOf([item], state) : []
  return {
    title: parameterName(key),
    steps: [
      valueOrigin(key, state, origins),
      ...(grounds.length > 0 ? [{ what: 'Answers and evidence on its item', rests: grounds }] : []),
    ],
  }
}

/** Why a limit is in force; undefined when there is no such limit. */
export async function whyLimit({ state }: ProgrammeView, key: string): Promise<Chain | undefined> {
  const limit: Limit | undefined = findLimit(key)
  if (!limit) return undefined
  const origins = await readOrigins(state.programme.id, { parameters: [], limits: [key], rows: [] })
  return { title: limit.label, steps: [limitOrigin(limit, state, origins)] }
}
