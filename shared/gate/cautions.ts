import type { Finding } from '@/shared/rules/finding'
import type { PlannedItem } from './programme-state'

/** What of an item's work can hurt: what the item itself says, and what its findings do. */
export const cautionsOf = (
  { definition }: PlannedItem,
  findings: ReadonlyMap<string, Finding>,
): readonly string[] => [
  ...definition.cautions,
  ...definition.rules.flatMap(({ id }) => findings.get(id)?.cautions ?? []),
]
