import type { Judged } from '@/lib/commands/signatures/load-judged'
import { foundText } from '@/shared/gate/found-then'
import type { ItemState } from '@/shared/gate/item-status'
import type { ApprovalEntry } from '@/shared/gate/programme-state'
import type { Department } from '@/shared/plan/department'

interface Approving {
  readonly id: string
  readonly itemState: ItemState
  readonly department: Department
  readonly comment: string
  /** The lapsed approval that is confirmed, if it is not given again. */
  readonly confirms?: ApprovalEntry
}

/** The row and the entry of one approval, whether it is signed alone or with others. */
export function approvalOf(
  { judgement }: Pick<Judged, 'judgement'>,
  { id, itemState, department, comment, confirms }: Approving,
) {
  const { item, digest, signedContent } = itemState
  // A confirmation keeps the margins of the approval that was given on reading, so that they cannot creep.
  const found = confirms?.found ?? foundText(item, judgement.findings)
  return {
    row: {
      id,
      itemKey: item.definition.key,
      department,
      digest,
      cover: signedContent,
      found,
      confirms: confirms?.id ?? null,
    },
    record: {
      approval: id,
      item: item.definition.key,
      title: item.definition.title,
      department,
      meaning: confirms
        ? 'confirms the approval, which a change leaves as it was in substance'
        : 'approves the item as it stands',
      digest,
      cover: JSON.parse(signedContent),
      found: JSON.parse(found),
      confirms: confirms?.id ?? null,
      comment,
    },
  }
}
