import { findParameter, findRule } from '@/shared/catalogue/standard-plan'
import type { OpenPoint } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'

/** An open point by its name alone, for a list of many: the value, the finding, whose approval. */
export function pointName({ kind, target }: OpenPoint): string {
  switch (kind) {
    case 'value':
      return findParameter(target)?.label ?? target
    case 'finding':
      return findRule(target)?.title ?? target
    case 'approval':
      return `approval by ${DEPARTMENT_NAMES[target as Department]}`
    case 'action':
    case 'concession':
      return `${kind} ${target}`
    case 'evidence':
      return `evidence: ${target}`
    case 'not applicable':
      return 'whether it applies'
  }
}
