import { randomUUID } from 'node:crypto'
import { actionAddress, parameterAddress, reviewAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { parameterName } from '@/shared/commands/named'
import { answerInWords } from '@/shared/gate/answer-in-words'
import { refusal } from '@/shared/policy'
import { becameOf } from '@/shared/reviews/became-of'
import { LINE_NAMES, type MinuteLine, type Review } from '@/shared/reviews/review'
import { strikeMinute } from '../actions'
import { SubjectLink } from './subject-link'

interface MinutesProps {
  view: ProgrammeView
  review: Review
  /** The number of a line that is to be struck. */
  strike: string | undefined
}

/** The minutes line by line, with what became of each since. */
export function Minutes({ view, review, strike }: MinutesProps) {
  const mayStrike = !review.closed && !refusal('strike-minute', view.actor)
  const asked = mayStrike && review.lines.find(({ number, struck }) => String(number) === strike && !struck)
  return (
    <Section id="minutes" heading="Minutes">
      {review.lines.length === 0 ? (
        <Empty title="Nothing is minuted yet">Choose a point, type a line, press Enter.</Empty>
      ) : (
        <RuledTable
          caption="Minutes"
          captionHidden
          rows={review.lines}
          rowKey={({ number }) => number}
          columns={[
            {
              label: 'No.',
              set: 'shrink',
              cell: ({ number }) => <span id={`line-${number}`}>{number}</span>,
            },
            { label: 'Kind', set: 'shrink', cell: ({ kind }) => LINE_NAMES[kind] },
            { label: 'Line', names: true, cell: (line) => <Line {...{ view, review, line }} /> },
            {
              label: 'By',
              cell: ({ author, at }) => (
                <>
                  {author}, <Day at={at} />
                </>
              ),
            },
            { label: 'What became of it', cell: (line) => <Became view={view} line={line} /> },
            ...(mayStrike
              ? [
                  {
                    label: 'Correct',
                    set: 'shrink' as const,
                    cell: ({ number, struck }: MinuteLine) =>
                      struck ? (
                        '–'
                      ) : (
                        <a
                          className="print-hidden"
                          href={`${reviewAddress(view.code, review.number)}?strike=${number}#strike`}
                        >
                          Strike<span className="sr-only"> line {number}</span>
                        </a>
                      ),
                  },
                ]
              : []),
          ]}
        />
      )}
      {asked && <StrikeForm view={view} review={review} line={asked} />}
    </Section>
  )
}

function Line({ view, review, line }: { view: ProgrammeView; review: Review; line: MinuteLine }) {
  const { about, text, struck, corrects, owner } = line
  return (
    <>
      {about && (
        <span className="faint">
          <SubjectLink view={view} review={review} subject={about} />:{' '}
        </span>
      )}
      {struck ? <del>{text}</del> : text}
      {owner && <span className="faint"> ({owner.name})</span>}
      {corrects !== null && <span className="faint"> instead of line {corrects}</span>}
      {struck && (
        <span className="block faint">
          Struck by {struck.by}, <Day at={struck.at} />: {struck.why}
        </span>
      )}
    </>
  )
}

function Became({ view, line }: { view: ProgrammeView; line: MinuteLine }) {
  const { action, revised } = becameOf(line, view.state)
  if (!action && revised.length === 0) return <span className="faint">–</span>
  return (
    <>
      {action && (
        <span className="block">
          <a href={actionAddress(view.code, action.number)}>Action {action.number}</a>: {action.status}
          {action.answer && `, ${answerInWords(action.answer)}`}
        </span>
      )}
      {revised.map(({ parameter, number, at }) => (
        <span key={parameter} className="block">
          <a href={parameterAddress(view.code, parameter)}>{parameterName(parameter)}</a>: revision {number},{' '}
          <Day at={at} />
        </span>
      ))}
    </>
  )
}

function StrikeForm({ view, review, line }: { view: ProgrammeView; review: Review; line: MinuteLine }) {
  return (
    <div id="strike" className="print-hidden">
      <CommandForm
        action={strikeMinute}
        formKey={randomUUID()}
        hidden={{ programme: view.code, review: review.number, line: line.number }}
        label={`Strike line ${line.number}`}
        className="form-narrow"
      >
        <p>
          Line {line.number}: “{line.text}”
        </p>
        {line.kind !== 'action' && <TextBox name="instead" label="What it should say" optional />}
        <TextBox name="reason" label="Why it is struck" required />
        <SubmitButton kind="danger">Strike the line</SubmitButton>
      </CommandForm>
    </div>
  )
}
