import type { Department } from '@/shared/plan/department'
import type { Place } from '@/shared/place'

/** One thing that waits for this person. */
export interface OpenTask {
  readonly verb: 'answer' | 'accept' | 'find the cause' | 'approve' | 'approve again' | 'sign' | 'decide'
  readonly message: string
  readonly department: Department
  readonly dueOn: string | null
  readonly place: Place
}
