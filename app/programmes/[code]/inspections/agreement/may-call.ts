import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { inspectorCall } from '@/shared/records/kinds/inspector-call'

/** Whether this person’s department keeps the calls of inspectors. */
export const mayCall = (view: ProgrammeView): boolean =>
  !refusal('add-record', view.actor) &&
  inspectorCall.departments.some((department) => view.actor.departments.includes(department))
