import { notFound } from 'next/navigation'
import { reviewsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { readOpenBeside, readReview } from '@/lib/queries/reviews'
import { agendaOf } from '@/shared/reviews/agenda'
import { PrintButton } from '../../print/print-button'
import { Agenda } from './agenda'
import { Attendance } from './attendance'
import { Close } from './close'
import { Closed } from './closed'
import { MinuteForm } from './minute-form'
import { Minutes } from './minutes'
import { minuteChoices } from './minute-choices'

export const generateMetadata = programmeTitle<{ review: string }>(
  ({ code, review }) => `Review ${review}, ${code}`,
)

/** One design review: who is there, what is open, and the minutes as they are taken. */
export default programmePage<{ review: string }, { about?: string; as?: string; strike?: string }>(
  async ({ visit, code, params: { review: number }, searchParams: { about, as, strike } }) => {
    const { state, judgement } = visit.view
    const review = /^\d{1,6}$/.test(number) ? await readReview(state.programme.id, Number(number)) : undefined
    if (!review) notFound()
    const beside = await readOpenBeside(state.programme.id)
    const agenda = review.closed ? [] : agendaOf(state, judgement, beside)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={reviewsAddress(code)}
        place={[{ text: 'Reviews', href: reviewsAddress(code) }, { text: `Review ${number}` }]}
        title={review.title}
        supplement={review.closed ? 'The minutes are signed; nothing of them changes any more.' : undefined}
        cells={[
          { label: 'Review', value: number },
          { label: 'Held', value: <Day at={review.heldOn} /> },
          { label: 'Chair', value: review.chair },
          {
            label: 'Minutes',
            value: review.closed ? <Digest value={review.closed.digest} length={12} /> : 'open',
          },
        ]}
      >
        {(view) => (
          <>
            <Attendance view={view} review={review} />
            {!review.closed && <Agenda view={view} review={review} agenda={agenda} beside={beside} />}
            <Minutes view={view} review={review} strike={strike} />
            {!review.closed && <MinuteForm {...minuteChoices(view, review, agenda, { about, as })} />}
            {review.closed ? (
              <Closed view={view} review={review} />
            ) : (
              <Close view={view} review={review} agenda={agenda} hasPassword={visit.person.hasPassword} />
            )}
            <PrintButton />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
