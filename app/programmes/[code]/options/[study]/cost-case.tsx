import { optionAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { NumberField } from '@/app/ui/field'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { works } from '@/lib/settings/works'
import { optionCostCase } from '@/shared/cost/option-cost'
import type { OptionComparison } from '@/shared/gate/option-outcome'
import { specifiedOf } from '@/shared/cost/specified-alternatives'
import type { OptionStudy } from '@/shared/gate/option-study'
import { optionColumns } from './columns'
import { Assumptions } from './cost-assumptions'
import { CostLines } from './cost-lines'
import { costQuestion } from './cost-question'
import { costRows } from './cost-rows'

interface CostCaseProps {
  view: ProgrammeView
  study: OptionStudy
  comparison: OptionComparison
  asked: { boards?: string; years?: string; lot?: string }
}

/** What each alternative costs over the boards made, beside the rework and field repair to be expected. */
export function CostCase({ view, study, comparison, asked }: CostCaseProps) {
  const { typed, question, problem } = costQuestion(asked, view.state.facts.values, works().notation.decimal)
  const costCase =
    question && optionCostCase(specifiedOf(study.number, comparison.outcomes, view.state.actions), question)
  return (
    <Section
      id="cost"
      heading="Cost case"
      lead={
        costCase &&
        question &&
        `Over ${costCase.boards} boards: ${question.boardsAYear} a year for ${question.years} ${question.years === 1 ? 'year' : 'years'}.`
      }
    >
      <form
        method="get"
        action={`${optionAddress(view.code, study.number)}#cost`}
        className="form-row option-choose print-hidden"
        aria-label="Over how many boards"
      >
        <NumberField name="boards" label="Boards per year" defaultValue={typed.boards} />
        <NumberField name="years" label="Production years" defaultValue={typed.years} />
        <NumberField name="lot" label="Boards in a lot" defaultValue={typed.lot} optional />
        <Button type="submit">Recalculate</Button>
      </form>
      {problem && <Notice kind="warning">{problem}</Notice>}
      {costCase && (
        <>
          <div className="option-table">
            <RuledTable
              caption="What each alternative costs"
              captionHidden
              narrow="cards-early"
              columns={optionColumns(study, comparison, false)}
              rows={costRows(costCase)}
              rowKey={({ key }) => key}
            />
          </div>
          <div className="picture-row">
            <CostLines costCase={costCase} />
            <Assumptions view={view} costCase={costCase} />
          </div>
        </>
      )}
    </Section>
  )
}
