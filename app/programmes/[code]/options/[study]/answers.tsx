import { actionAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { actionStatus } from '@/shared/gate/action-status'
import { answerInWords } from '@/shared/gate/answer-in-words'
import { letterOf } from '@/shared/gate/option-letter'
import type { OptionStudy } from '@/shared/gate/option-study'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

/** What other departments answered about the item, and which alternatives rest on it. */
export function Answers({
  view,
  study: { itemKey, alternatives },
}: {
  view: ProgrammeView
  study: OptionStudy
}) {
  const cited = (number: number): string =>
    alternatives
      .flatMap(({ actions }, position) => (actions.includes(number) ? [letterOf(position)] : []))
      .join(', ')
  const answered = view.state.actions.flatMap((action) =>
    action.answer && (action.itemKey === itemKey || cited(action.number))
      ? [{ ...action, answer: action.answer }]
      : [],
  )
  if (answered.length === 0) return null
  return (
    <Section heading="Answers of other departments">
      <RuledTable
        caption="Answered actions on this item"
        captionHidden
        rows={answered}
        rowKey={({ number }) => number}
        columns={[
          { label: 'No.', set: 'shrink', cell: ({ number }) => number },
          {
            label: 'Question',
            names: true,
            cell: ({ number, question }) => <a href={actionAddress(view.code, number)}>{question}</a>,
          },
          {
            label: 'Answer',
            cell: ({ answer, answeredByName, to }) => (
              <>
                <strong>{answerInWords(answer)}</strong>. {answer.comment} ({answeredByName},{' '}
                {DEPARTMENT_NAMES[to].toLowerCase()})
              </>
            ),
          },
          { label: 'Status', set: 'shrink', cell: actionStatus },
          { label: 'Cited by', set: 'shrink', cell: ({ number }) => cited(number) || 'none' },
        ]}
      />
    </Section>
  )
}
