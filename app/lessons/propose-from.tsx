import { newLessonAddress } from '@/app/addresses'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'

/** From what taught something, the way to propose it for later programmes; for those who may. */
export function ProposeFrom({
  view,
  kind,
  what,
  id,
}: {
  view: ProgrammeView
  kind: 'finding' | 'item'
  /** As in "this finding". */
  what: string
  id: string
}) {
  if (refusal('propose-lesson', view.actor)) return null
  return (
    <p className="form-actions">
      <a href={newLessonAddress(view.code, { kind, key: id })}>Propose a lesson from {what}</a>
    </p>
  )
}
