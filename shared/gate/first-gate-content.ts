import { stageBefore, type Stage } from '@/shared/plan/stage'
import type { Finding } from '@/shared/rules/finding'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import { gateSubstance } from './gate-substance'
import type { ProgrammeState } from './programme-state'
import { firstSignedContent, type ItemState } from './item-status'

/**
 * What a signature in the first form would cover today, by gate. Undefined for
 * a gate one of whose items has no first form any more, and for those after it.
 */
export function firstGateDigests(
  state: ProgrammeState,
  all: readonly ItemState[],
  findings: ReadonlyMap<string, Finding>,
): (stage: Stage) => string | undefined {
  const known = new Map<Stage, string | undefined>()
  return function digestOf(stage) {
    if (!known.has(stage)) known.set(stage, digestOfGate(stage, digestOf))
    return known.get(stage)
  }

  function digestOfGate(stage: Stage, digestOf: (stage: Stage) => string | undefined): string | undefined {
    const earlier = stageBefore(stage)
    const before = earlier && digestOf(earlier)
    const items = all.filter(({ item }) => item.definition.stage === stage)
    const digests = new Map(
      items.map((entry) => [entry, (entry.first ?? firstSignedContent(entry.item, state, findings))?.digest]),
    )
    if ((earlier && !before) || [...digests.values()].includes(undefined)) return undefined
    return sha256(
      canonicalJson(gateSubstance(stage, state, before, items, (item) => digests.get(item) ?? '')),
    )
  }
}
