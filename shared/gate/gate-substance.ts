import type { Stage } from '@/shared/plan/stage'
import type { ProgrammeState } from './programme-state'
import type { ItemState } from './item-status'

/** What every form of a gate's cover holds: its stage's items by their digests in that form, and the gate before by its own. */
export const gateSubstance = (
  stage: Stage,
  { programme }: ProgrammeState,
  before: string | undefined,
  items: readonly ItemState[],
  digestOf: (item: ItemState) => string,
) => ({
  stage,
  programme: programme.code,
  before: before ?? null,
  items: items.map((state) => ({
    item: state.item.definition.key,
    setAside: state.status === 'not applicable',
    digest: digestOf(state),
  })),
})
