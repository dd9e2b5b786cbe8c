import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import type { GateState } from './gate'
import type { ConcessionEntry, ProgrammeState } from './programme-state'
import type { ItemState } from './item-status'

/*
 * Separation of duties: what a person may not sign because of what they
 * themselves did. Each answers with a sentence, or undefined when they may.
 */

/** People who wrote a value the item itself specifies, as it stands. */
export const authorsOf = ({ item }: ItemState, state: ProgrammeState): Set<string> =>
  new Set(item.definition.parameters.flatMap(({ key }) => state.revisions.get(key)?.authorId ?? []))

/**
 * An author's approval counts for one department only, and never alone: the
 * item must also ask for, and get, the approval of somebody else.
 */
export function approvalRefusal(
  itemState: ItemState,
  state: ProgrammeState,
  personId: string,
  department: Department,
): string | undefined {
  const { definition, tailoredOut } = { ...itemState.item, tailoredOut: itemState.item.tailoredOut }
  if (tailoredOut?.agreed) return 'The item is not applicable; there is nothing to approve.'
  if (!definition.approvers.includes(department))
    return `${DEPARTMENT_NAMES[department]} is not asked to approve this item.`
  if (itemState.approvals.some((entry) => entry.department === department && entry.holds)) {
    return `${DEPARTMENT_NAMES[department]} has already approved the item as it stands.`
  }
  const substance = itemState.openPoints.find(({ kind }) => kind !== 'approval')
  if (substance) return `It cannot be approved yet. ${substance.message}`
  const other = itemState.approvals.find((entry) => entry.holds && entry.approval?.personId === personId)
  if (other)
    return `You have approved it for ${DEPARTMENT_NAMES[other.department]}. A second department’s approval comes from somebody else.`
  if (definition.approvers.length === 1 && authorsOf(itemState, state).has(personId)) {
    return 'You wrote a value of this item. Its only approval has to come from somebody else.'
  }
  return undefined
}

/** The three signatories of a gate are three people, and quality's is not the author of a concession it rests on. */
export function gateSignatoryRefusal(
  gate: GateState,
  items: readonly ItemState[],
  concessions: readonly ConcessionEntry[],
  personId: string,
  department: Department,
): string | undefined {
  const other = gate.signatures.find(
    (entry) => entry.holds && entry.signature?.personId === personId && entry.department !== department,
  )
  if (other)
    return `You have signed this gate for ${DEPARTMENT_NAMES[other.department]}. Each department’s signature comes from another person.`
  if (department !== 'quality') return undefined
  const keys = new Set(
    items.filter(({ item }) => item.definition.stage === gate.stage).map(({ item }) => item.definition.key),
  )
  const own = concessions.find(
    (entry) => keys.has(entry.itemKey) && !entry.refused && entry.requestedById === personId,
  )
  return own
    ? `You asked for concession ${own.number} of this stage. Somebody else of ${DEPARTMENT_NAMES.quality} signs its gate.`
    : undefined
}

/**
 * A concession is granted by two people, one for design and one for quality.
 * Whoever asked for it may be design's signature, since design most often asks;
 * quality's comes from somebody else.
 */
export function concessionGrantRefusal(
  concession: ConcessionEntry,
  personId: string,
  department: Department,
): string | undefined {
  if (department === 'production') return 'A concession is granted by design and quality.'
  if (concession.refused) return 'This concession was refused.'
  if (concession[department]) return `${DEPARTMENT_NAMES[department]} has already granted it.`
  const other = department === 'design' ? concession.quality : concession.design
  if (other?.byId === personId)
    return 'You have granted it for the other department. The second signature comes from somebody else.'
  if (department === 'quality' && concession.requestedById === personId) {
    return 'You asked for this concession. Quality’s signature comes from somebody else.'
  }
  return undefined
}
