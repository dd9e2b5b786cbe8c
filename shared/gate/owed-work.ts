import type { Department } from '@/shared/plan/department'
import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import type { Stage } from '@/shared/plan/stage'

/** Where to go about something owed. */
export type OwedPlace =
  | { readonly kind: 'action' | 'concession' | 'lesson'; readonly number: number }
  | { readonly kind: 'item'; readonly item: string }
  | { readonly kind: 'gate'; readonly stage: Stage }
  | { readonly kind: 'log'; readonly log: string }
  | { readonly kind: 'defect chart'; readonly chart: DefectChartKey }

/** One thing that waits for this person. */
export interface Owed {
  readonly verb: 'answer' | 'accept' | 'find the cause' | 'approve' | 'approve again' | 'sign' | 'decide'
  readonly says: string
  readonly department: Department
  readonly dueOn: string | null
  readonly place: OwedPlace
}
