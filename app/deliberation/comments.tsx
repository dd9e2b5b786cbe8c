import { randomUUID } from 'node:crypto'
import { actionAddress, itemAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox } from '@/app/forms/fields'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { addComment, resolveComment } from '@/app/deliberation/comment-actions'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { readComments } from '@/lib/queries/comments'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Comment } from '@/shared/reviews/review'
import { sameSubject, subjectText, type Subject } from '@/shared/reviews/subject'
import { subjectInWords } from '@/shared/reviews/subject-in-words'

interface CommentsProps {
  view: ProgrammeView
  /** What can be remarked on here, the page's own subject first. */
  subjects: readonly [Subject, ...Subject[]]
  /** The item that an action would be about. */
  item: string
}

/** What people remarked beside an item, a finding or a value; resolved remarks stand folded away. */
export async function Comments({ view, subjects, item }: CommentsProps) {
  const comments = await readComments(view.state.programme.id, subjects)
  const open = comments.filter(({ resolved }) => !resolved)
  const resolved = comments.filter((comment) => comment.resolved)
  const [own] = subjects
  if (comments.length === 0 && refusal('add-comment', view.actor)) return null
  return (
    <Section id="comments" heading="Comments">
      {open.length > 0 && (
        <ul className="comments">
          {open.map((comment) => (
            <OneComment key={comment.number} {...{ view, comment, own, item }} />
          ))}
        </ul>
      )}
      {resolved.length > 0 && (
        <details className="disclosure disclosure-printed">
          <summary>{resolved.length === 1 ? 'One resolved' : `${resolved.length} resolved`}</summary>
          <ul className="comments disclosure-body">
            {resolved.map((comment) => (
              <OneComment key={comment.number} {...{ view, comment, own, item }} />
            ))}
          </ul>
        </details>
      )}
      <WriteComment view={view} subjects={subjects} />
    </Section>
  )
}

function OneComment({
  view,
  comment,
  own,
  item,
}: {
  view: ProgrammeView
  comment: Comment
  own: Subject
  item: string
}) {
  const { number, about, text, mentions, author, at, resolved, action } = comment
  return (
    <li id={`comment-${number}`}>
      <p className="comment-head">
        {author}, <Day at={at} />
        {mentions.length > 0 && <>, for {mentions.map(({ name }) => name).join(', ')}</>}
        {!sameSubject(about, own) && <>, on {subjectInWords(about)}</>}
      </p>
      <p className="prose">{text}</p>
      {resolved ? (
        <p className="faint">
          {action === null ? 'Resolved' : <a href={actionAddress(view.code, action)}>Action {action}</a>} by{' '}
          {resolved.by}, <Day at={resolved.at} />
        </p>
      ) : (
        !refusal('resolve-comment', view.actor) && (
          <CommandForm
            action={resolveComment}
            formKey={randomUUID()}
            hidden={{ programme: view.code, comment: number }}
            label={`Resolve comment ${number}`}
            className="comment-does"
          >
            <SubmitButton kind="plain">Resolved</SubmitButton>
            {view.actor.departments.length > 0 && (
              <a href={`${itemAddress(view.code, item)}?comment=${number}#actions`}>Ask it as an action</a>
            )}
          </CommandForm>
        )
      )}
    </li>
  )
}

function WriteComment({ view, subjects }: Pick<CommentsProps, 'view' | 'subjects'>) {
  if (refusal('add-comment', view.actor)) return null
  const members = new Map(view.state.members.map(({ personId, name }) => [personId, name]))
  members.delete(view.actor.personId)
  const [only, ...more] = subjects
  return (
    <CommandForm
      action={addComment}
      formKey={randomUUID()}
      hidden={{ programme: view.code, ...(more.length === 0 && { about: subjectText(only) }) }}
      label="Comment"
    >
      <AnsweredDisclosure summary="Comment">
        <div className="form-narrow">
          {more.length > 0 && (
            <ChoiceBox
              name="about"
              label="On"
              choices={subjects.map((subject) => ({
                value: subjectText(subject),
                text: subjectInWords(subject),
              }))}
            />
          )}
          <LinesBox name="text" label="Comment" rows={2} required />
          <ChoiceBox
            name="mentions"
            label="For"
            hint="They see it on their desk until it is resolved."
            optional
            choices={[
              { value: '', text: 'nobody in particular' },
              ...[...members].map(([value, text]) => ({ value, text })),
            ]}
          />
          <SubmitButton kind="quiet">Write the comment</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
