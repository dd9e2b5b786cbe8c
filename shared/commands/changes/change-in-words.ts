import { boundInWords, limitName, parameterName, valueInBrief } from '@/shared/commands/named'
import { revisionInBrief } from '@/shared/commands/specification/revision-in-brief'
import type { ProposedChange } from '@/shared/gate/proposed-change'

/** A proposed change in a line; of a value with what it replaces, where that is known. */
export function changeInWords(change: ProposedChange, before?: unknown): string {
  switch (change.kind) {
    case 'value':
      return `${parameterName(change.parameter)}: ${
        before === undefined
          ? valueInBrief(change.parameter, change.value)
          : revisionInBrief(change.parameter, before, change.value)
      }`
    case 'requirement':
      return `${limitName(change.limit)}: ${boundInWords(change.limit, change.value)}, by ${change.document} (${change.authority})`
    case 'withdrawal':
      return `${limitName(change.limit)}: ${boundInWords(change.limit, change.value)} of ${change.document} (${change.authority}) withdrawn`
  }
}
