import { Moment } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { works } from '@/lib/settings/works'
import { answerInWords } from '@/shared/gate/answer-in-words'
import { letterOf } from '@/shared/gate/option-letter'
import { optionCostCase } from '@/shared/cost/option-cost'
import { compareOptions } from '@/shared/gate/option-outcome'
import { itemsOf, type OptionStudy } from '@/shared/gate/option-study'
import { specifiedOf } from '@/shared/cost/specified-alternatives'
import { standing } from '@/shared/gate/study-revision'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { optionColumns } from '../options/[study]/columns'
import { comparedGroups } from '../options/[study]/compared-groups'
import { costQuestion } from '../options/[study]/cost-question'
import { costRows } from '../options/[study]/cost-rows'
import { comparisonLead } from '../options/[study]/side-by-side'
import { itemTitle } from '../options/study-table'

/** One option study: its question, its alternatives beside each other, their cost, what they rest on, what became of it. */
export function StudyPrinted({ view, study }: { view: ProgrammeView; study: OptionStudy }) {
  const { number, title, openedBy, openedAt } = study
  const comparison = compareOptions(view.state, view.judgement, standing(study.alternatives))
  const { question, problem } = costQuestion({}, view.state.facts.values, works().notation.decimal)
  return (
    <Section level={3} heading={`Study ${number}: ${title}`} lead={comparisonLead(comparison)}>
      <p>
        Of{' '}
        {itemsOf(study)
          .map((key) => itemTitle(view, key))
          .join(', ')}
        . Opened by {openedBy}, <Moment at={openedAt} />.
      </p>
      <Adoption study={study} />
      <RuledTable
        caption="The alternatives side by side"
        columns={optionColumns(study, comparison, true)}
        groups={comparedGroups(view, comparison)}
        rowKey={({ key }) => key}
      />
      {question ? (
        <RuledTable
          caption={`What each alternative costs over ${question.boards} boards, those of one year`}
          columns={optionColumns(study, comparison, false)}
          rows={costRows(
            optionCostCase(specifiedOf(number, comparison.outcomes, view.state.actions), question),
          )}
          rowKey={({ key }) => key}
        />
      ) : (
        <p>{problem}</p>
      )}
      <CitedBy view={view} study={study} />
    </Section>
  )
}

function Adoption({ study: { adoption } }: { study: OptionStudy }) {
  if (!adoption) return <p>No alternative has been adopted.</p>
  return (
    <p>
      <strong>Adopted: {adoption.name}</strong>, by {adoption.by}, <Moment at={adoption.at} />. {adoption.why}
    </p>
  )
}

/** What other departments answered about the item, and which alternatives name it as what they rest on. */
function CitedBy({
  view,
  study: { number: own, itemKey, alternatives },
}: {
  view: ProgrammeView
  study: OptionStudy
}) {
  const rows = view.state.actions.flatMap((action) => {
    const citedBy = standing(alternatives).flatMap(({ actions }, position) =>
      actions.includes(action.number) ? [letterOf(position)] : [],
    )
    return action.answer && (action.study === own || action.itemKey === itemKey || citedBy.length > 0)
      ? [{ ...action, answer: action.answer, citedBy }]
      : []
  })
  if (rows.length === 0) return null
  return (
    <RuledTable
      caption="Answers of other departments"
      rows={rows}
      rowKey={({ number }) => number}
      columns={[
        { label: 'No.', set: 'shrink', cell: ({ number }) => number },
        { label: 'Question', names: true, cell: ({ question }) => question },
        {
          label: 'Answer',
          cell: ({ answer, answeredByName, to }) =>
            `${answerInWords(answer)}. ${answer.comment} (${answeredByName}, ${DEPARTMENT_NAMES[to].toLowerCase()})`,
        },
        { label: 'Cited by', set: 'shrink', cell: ({ citedBy }) => citedBy.join(', ') || 'none' },
      ]}
    />
  )
}
