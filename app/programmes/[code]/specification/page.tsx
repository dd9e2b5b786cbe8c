import { compareAddress, specificationAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { TakeTable } from '@/app/ui/take-table'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import { readPreferenceDifferences, readRuleDifferences } from '@/lib/queries/company-rules'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ALL_LIMITS, mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { stageAtWork } from '@/shared/gate/stage-at-work'
import type { Parameter } from '@/shared/plan/parameter'
import { governingRequirement } from '@/shared/plan/requirement'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { RuleDifferences } from '../company-rules/rule-differences'
import { ValueDifferences } from '../company-rules/value-differences'
import { FilterForm } from './filter-form'
import { ItemValues } from './item-values'
import { Limits } from './limits'
import { isNarrowed, sheetFilter, type SheetFilter } from './sheet-filter'

export const generateMetadata = programmeTitle(({ code }) => `Specification, ${code}`)

/** Every specified value and every limit of the programme on one sheet. */
export default programmePage<object, Record<string, string | string[] | undefined>>(
  async ({ visit, code, searchParams }) => {
    const filter = sheetFilter(searchParams)
    const { state } = visit.view
    const [differences, otherValues] = await Promise.all([
      readRuleDifferences(state.programme.id),
      readPreferenceDifferences(state),
    ])
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={specificationAddress(code)}
        place={[{ text: 'Specification' }]}
        title="Specification"
        supplement="What every later limit and finding is judged on"
        cells={cellsOf(visit.view)}
      >
        {(view) => (
          <>
            <TakeTable address={tableAddress(code, 'specification')} what="Every value" />
            <FilterForm code={code} filter={filter} />
            {filter.shown !== 'relaxed' && <Values view={view} filter={filter} />}
            <RuleDifferences view={view} differences={differences} />
            <ValueDifferences view={view} differences={otherValues} />
            <Limits view={view} filter={filter} />
            <p className="print-hidden">
              <a href={compareAddress(code)}>Compare with another programme</a>
            </p>
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

function cellsOf({ state }: ProgrammeView) {
  const parameters = state.items
    .filter(({ tailoredOut }) => !tailoredOut?.agreed)
    .flatMap(({ definition }) => definition.parameters)
  const empty = parameters.filter(({ key }) => !state.facts.values.has(key))
  const relaxed = ALL_LIMITS.filter((limit) => governingRequirement(limit, state.facts.requirements).relaxed)
  return [
    { label: 'Specified', value: `${parameters.length - empty.length} of ${parameters.length}` },
    { label: 'Still to specify', value: empty.filter((parameter) => !mayStayEmpty(parameter)).length },
    { label: 'Requirements stated', value: state.facts.requirements.length },
    { label: 'Limits looser than the default', value: relaxed.length },
  ]
}

function Values({ view, filter }: { view: ProgrammeView; filter: SheetFilter }) {
  const stages = STAGES.filter((stage) => !filter.stage || stage === filter.stage).map((stage) => ({
    stage,
    items: view.judgement.items
      .filter(({ item }) => item.definition.stage === stage && !item.tailoredOut?.agreed)
      .map((state) => ({
        state,
        parameters: state.item.definition.parameters.filter(
          ({ key, owner }) =>
            (!filter.department || owner === filter.department) &&
            (filter.shown !== 'missing' || !view.state.facts.values.has(key)),
        ),
      }))
      .filter(({ parameters }) => parameters.length > 0),
  }))
  const filled = stages.filter(({ items }) => items.length > 0)
  if (filled.length === 0)
    return <Empty title="No value answers this">Everything asked for here is specified.</Empty>
  const now = stageAtWork(view.judgement)
  return filled.map(({ stage, items }) => (
    <Section
      key={stage}
      heading={`${STAGE_NAMES[stage]}: ${specifiedOf(view, items)}`}
      fold={stage === now || isNarrowed(filter) ? 'open' : 'shut'}
    >
      {items.map(({ state, parameters }) => (
        <ItemValues key={state.item.definition.key} view={view} state={state} parameters={parameters} />
      ))}
    </Section>
  ))
}

/** How many of the values shown are specified, in words. */
function specifiedOf(
  { state }: ProgrammeView,
  items: readonly { parameters: readonly Parameter[] }[],
): string {
  const all = items.flatMap(({ parameters }) => parameters)
  return `${all.filter(({ key }) => state.facts.values.has(key)).length} of ${all.length} values specified`
}
