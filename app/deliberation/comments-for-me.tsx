import { placeAddress } from '@/app/place-address'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import { commentsFor } from '@/lib/queries/comments'
import { commentsPlace, subjectInWords } from '@/shared/reviews/subject-in-words'

/** Comments that name this person and are not resolved yet, over all their programmes. */
export async function CommentsForMe({ personId }: { personId: string }) {
  const waiting = await commentsFor(personId)
  if (waiting.length === 0) return null
  return (
    <Section heading="Comments for me">
      <ul className="comments">
        {waiting.map(({ code, programme, comment: { number, about, author, at, text } }) => (
          <li key={`${code} ${number}`}>
            <p className="comment-head">
              <a href={placeAddress(code, commentsPlace(about))} title={programme}>
                {code}, {subjectInWords(about)}
              </a>
              : {author}, <Day at={at} />
            </p>
            <p className="prose">{text}</p>
          </li>
        ))}
      </ul>
    </Section>
  )
}
