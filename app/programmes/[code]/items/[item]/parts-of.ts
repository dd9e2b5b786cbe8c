import type { SheetPart } from '@/app/ui/on-this-sheet'
import { limitsBehind } from '@/shared/gate/signed-content'
import type { ItemState } from '@/shared/gate/item-status'

/** The parts an item's sheet always has or that its declaration brings, in the order of the sheet. */
export function partsOf({ item }: ItemState): SheetPart[] {
  const { parameters, rules } = item.definition
  return [
    ...(parameters.length > 0 ? [{ text: 'Values', id: 'values' }] : []),
    ...(rules.length > 0 ? [{ text: 'Findings', id: 'findings' }] : []),
    ...(limitsBehind(item).length > 0 ? [{ text: 'Limits', id: 'limits' }] : []),
    { text: 'Evidence', id: 'evidence' },
    { text: 'Approvals', id: 'approvals' },
  ]
}
