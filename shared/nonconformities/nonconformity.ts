import type { Department } from '@/shared/plan/department'
import type { Subject } from '@/shared/reviews/subject'

/** Where it was found, as far as it is known; '' where it is not. */
export const PLACE_NAMES = {
  joint: 'Joint',
  part: 'Part',
  lot: 'Lot',
  assembly: 'Assembly',
  line: 'Line',
} as const
export type NonconformityPlace = { readonly [Where in keyof typeof PLACE_NAMES]: string }

/**
 * What is done about a nonconformity. Correction and corrective action in the sense of ISO 9000:2015, 3.12.3 and
 * 3.12.2: the one mends what was found, the other removes its cause. Containment is the trade's word.
 */
export const STEP_NAMES = {
  containment: 'Containment',
  cause: 'Cause',
  correction: 'Correction',
  'corrective action': 'Corrective action',
  check: 'Check that it helped',
} as const
export type StepKind = keyof typeof STEP_NAMES
export const STEP_KINDS = Object.keys(STEP_NAMES) as readonly StepKind[]

export interface NonconformityStep {
  readonly id: string
  readonly kind: StepKind
  readonly text: string
  readonly doneOn: string
  readonly helped: boolean | null
  readonly addedById: string
  readonly addedBy: string
  readonly at: string
  readonly withdrawn: { readonly by: string; readonly at: string; readonly why: string } | null
}

/** Something found that does not fulfil what was required of it (ISO 9000:2015, 3.6.9), and what was done about it. */
export interface Nonconformity {
  readonly number: number
  readonly title: string
  readonly found: string
  readonly foundOn: string
  readonly owner: Department
  readonly place: NonconformityPlace
  readonly source: Subject | null
  readonly openedBy: string
  readonly at: string
  readonly steps: readonly NonconformityStep[]
}
