import type { AnyRule } from '@/shared/rules/rule'
import type { Department } from '@/shared/plan/department'
import type { Limit } from '@/shared/plan/requirement'
import type { Parameter } from '@/shared/plan/parameter'
import type { Stage } from '@/shared/plan/stage'

/** Evidence an item wants before it can be ready. */
export interface WantedEvidence {
  readonly kind: string
  readonly label: string
  readonly required: boolean
}

/** One thing to be settled: who owns it, what it specifies, how it is judged, who must agree. */
export interface ItemDefinition {
  readonly key: string
  readonly stage: Stage
  readonly title: string
  /** The question the item settles, in a sentence or two. */
  readonly asks: string
  /** Raised when what a standard item settles becomes something else, which ends its approvals; wording alone does not. */
  readonly version: number
  readonly owner: Department
  readonly approvers: readonly Department[]
  readonly parameters: readonly Parameter[]
  readonly limits: readonly Limit[]
  readonly rules: readonly AnyRule[]
  readonly evidence: readonly WantedEvidence[]
  /** Hazards of the work the item asks for. */
  readonly cautions: readonly string[]
}
