import { AskForm } from '@/app/programmes/[code]/actions/ask-form'
import { actionColumns } from '@/app/programmes/[code]/actions/action-columns'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { actionStatus } from '@/shared/gate/action-status'
import { answerInWords } from '@/shared/gate/answer-in-words'
import { letterOf } from '@/shared/gate/option-letter'
import { itemsOf, type OptionStudy } from '@/shared/gate/option-study'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { standing } from '@/shared/gate/study-revision'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

/** What other departments answered about the item, and which alternatives rest on it. */
export function Answers({ view, study }: { view: ProgrammeView; study: OptionStudy }) {
  const { number: own, itemKey, adoption } = study
  const alternatives = standing(study.alternatives)
  const cited = (number: number): string =>
    alternatives
      .flatMap(({ actions }, position) => (actions.includes(number) ? [letterOf(position)] : []))
      .join(', ')
  const asked = view.state.actions.filter(
    ({ number, study: within, itemKey: about, answer }) =>
      within === own || (answer && within === null && about === itemKey) || cited(number),
  )
  if (asked.length === 0 && adoption) return null
  return (
    <Section
      id="questions"
      heading="Questions and answers"
      lead="What is asked within the study counts in its cost case: the amounts of an answer for the alternative that it names, or for all."
    >
      {asked.length > 0 && (
        <RuledTable
          caption="Questions and answers"
          captionHidden
          rows={asked}
          rowKey={({ number }) => number}
          columns={[
            ...actionColumns(view.code),
            {
              label: 'Answer',
              cell: (action) => <Answered action={action} />,
            },
            { label: 'Status', set: 'shrink', cell: actionStatus },
            {
              label: 'Counts for',
              set: 'shrink',
              cell: ({ number, study: within }) => (within === own ? 'this study' : cited(number) || 'none'),
            },
          ]}
        />
      )}
      {!adoption && <AskForm view={view} items={itemsOf(study)} study={own} />}
    </Section>
  )
}

function Answered({ action: { answer, answeredByName, to, askedOf, files } }: { action: ActionEntry }) {
  if (!answer) return <>waits for {askedOf?.name ?? DEPARTMENT_NAMES[to].toLowerCase()}</>
  return (
    <>
      <strong>{answerInWords(answer)}</strong>. {answer.comment} ({answeredByName},{' '}
      {DEPARTMENT_NAMES[to].toLowerCase()}
      {files.length > 0 && `; ${files.length} ${files.length === 1 ? 'file' : 'files'}`})
    </>
  )
}
