import { placeAddress } from '@/app/place-address'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Review } from '@/shared/reviews/review'
import type { Subject } from '@/shared/reviews/subject'
import { placeOfSubject, subjectInWords } from '@/shared/reviews/subject-in-words'

/** What a subject is called in this programme and these minutes. */
export function subjectNamed(view: ProgrammeView, review: Review, subject: Subject): string {
  const item = view.state.items.find(({ definition }) => definition.key === subject.key)
  const point = review.lines.find(({ number }) => String(number) === subject.key)
  return subjectInWords(subject, subject.kind === 'point' ? point?.text : item?.definition.title)
}

/** A subject by its name, leading to where it is shown. */
export function SubjectLink({
  view,
  review,
  subject,
}: {
  view: ProgrammeView
  review: Review
  subject: Subject
}) {
  const place = placeOfSubject(subject)
  const name = subjectNamed(view, review, subject)
  return place ? <a href={placeAddress(view.code, place)}>{name}</a> : <>{name}</>
}
