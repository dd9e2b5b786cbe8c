import { Day, Moment } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { LINE_NAMES, type Review } from '@/shared/reviews/review'
import { subjectNamed } from '../reviews/[review]/subject-link'

/** The minutes of every review, with who was there and who signed them. */
export function ReviewsPrinted({ view, reviews }: { view: ProgrammeView; reviews: readonly Review[] }) {
  return (
    <Section heading="Minutes of reviews">
      {reviews.length === 0 && <p>None held.</p>}
      {reviews.map((review) => (
        <ReviewPrinted key={review.number} view={view} review={review} />
      ))}
    </Section>
  )
}

function ReviewPrinted({ view, review }: { view: ProgrammeView; review: Review }) {
  const { number, title, heldOn, chair, present, lines, closed } = review
  return (
    <Section level={3} heading={`Review ${number}: ${title}`}>
      <p>
        <Day at={heldOn} />, chaired by {chair}. Present: {present.map(({ name }) => name).join(', ')}.{' '}
        {closed ? (
          <>
            Minutes signed by {closed.by}, <Moment at={closed.at} />, digest <Digest value={closed.digest} />.
          </>
        ) : (
          'The minutes are not signed yet.'
        )}
      </p>
      <RuledTable
        caption={`Minutes of review ${number}`}
        captionHidden
        rows={lines}
        rowKey={(line) => line.number}
        columns={[
          { label: 'No.', set: 'shrink', cell: (line) => line.number },
          { label: 'Kind', set: 'shrink', cell: ({ kind }) => LINE_NAMES[kind] },
          { label: 'About', cell: ({ about }) => (about ? subjectNamed(view, review, about) : 'general') },
          {
            label: 'Line',
            names: true,
            cell: ({ text, struck }) =>
              struck ? (
                <>
                  <del>{text}</del> struck by {struck.by}: {struck.why}
                </>
              ) : (
                text
              ),
          },
          {
            label: 'Owner and action',
            cell: ({ owner, action }) => (owner && action ? `${owner.name}, action ${action}` : '–'),
          },
          { label: 'By', set: 'shrink', cell: ({ author }) => author },
        ]}
      />
    </Section>
  )
}
