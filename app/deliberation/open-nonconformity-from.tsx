import { newNonconformityAddress, nonconformityAddress } from '@/app/addresses'
import { nonconformitiesFrom } from '@/lib/queries/nonconformities'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { subjectText, type Subject } from '@/shared/reviews/subject'

/** Nonconformities opened from what a page shows, and the way to open another. */
export async function NonconformitiesFrom({ view, source }: { view: ProgrammeView; source: Subject }) {
  const opened = await nonconformitiesFrom(view.state.programme.id, source)
  const may = !refusal('open-nonconformity', view.actor)
  if (opened.length === 0 && !may) return null
  return (
    <p className="form-actions">
      {opened.map(({ number, title }) => (
        <a key={number} href={nonconformityAddress(view.code, number)}>
          Nonconformity {number}: {title}
        </a>
      ))}
      {may && <a href={newNonconformityAddress(view.code, subjectText(source))}>Open a nonconformity</a>}
    </p>
  )
}
