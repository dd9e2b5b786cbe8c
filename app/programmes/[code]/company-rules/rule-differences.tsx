import { companyRulesAddress, limitAddress } from '@/app/addresses'
import { keepOwnRule, takeCompanyRule } from '@/app/forms/command-actions'
import { Day } from '@/app/ui/date'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { companyRuleName } from '@/shared/company-rules/company-rule'
import { undecided, type RuleDifference } from '@/shared/company-rules/rule-difference'
import { refusal } from '@/shared/policy'
import { Kept, TakeOrKeep } from './take-or-keep'

interface RuleDifferencesProps {
  view: ProgrammeView
  differences: readonly RuleDifference[]
}

/** What the company rules say today and the programme does not, with the two ways to decide; nothing where it follows them. */
export function RuleDifferences({ view, differences }: RuleDifferencesProps) {
  if (differences.length === 0) return null
  const refused = refusal('take-company-rule', view.actor)
  const open = undecided(differences).length
  return (
    <Section
      id="company-rules"
      heading="Against the company rules of today"
      lead={
        open > 0
          ? 'Nothing changes by itself: take each over, or keep the programme’s own and say why.'
          : 'The programme keeps its own; it can still take them over.'
      }
      aside={<a href={companyRulesAddress()}>Company rules</a>}
    >
      <RuledTable
        caption="Differences to the company rules"
        captionHidden
        narrow="cards-early"
        rows={differences}
        rowKey={({ rule, standing }) => `${standing} ${rule.id}`}
        columns={[
          {
            label: 'Limit',
            names: true,
            cell: ({ rule }) => (
              <a href={limitAddress(view.code, rule.limit)}>{findLimit(rule.limit)?.label ?? rule.limit}</a>
            ),
          },
          { label: 'At the works', cell: (difference) => <AtTheWorks {...difference} /> },
          { label: 'In the programme', cell: (difference) => <Here view={view} difference={difference} /> },
          {
            label: 'Decision',
            cell: (difference) => (
              <>
                {difference.kept && <Kept {...difference.kept} />}
                {!refused && <Decide code={view.code} difference={difference} />}
                {refused && !difference.kept && 'open'}
              </>
            ),
          },
        ]}
      />
    </Section>
  )
}

function AtTheWorks({ rule, standing }: RuleDifference) {
  const limit = findLimit(rule.limit)
  return (
    <>
      {limit && (
        <>
          {limit.direction} <Quantity value={rule.value} unit={limit.unit} figures={6} />
          {', '}
        </>
      )}
      {companyRuleName(rule)}
      {rule.relaxes && ', relaxes'}:{' '}
      {standing === 'withdrawn' && rule.withdrawn ? (
        <>
          withdrawn by {rule.withdrawn.by}, <Day at={rule.withdrawn.at} />. {rule.withdrawn.why}
        </>
      ) : (
        <>
          stated by {rule.stated.by}, <Day at={rule.stated.at} />. {rule.reason}
        </>
      )}
    </>
  )
}

/** The company layers that it has instead. */
function Here({ view, difference }: { view: ProgrammeView; difference: RuleDifference }) {
  const limit = findLimit(difference.rule.limit)
  const own = view.state.facts.requirements.filter(({ id }) =>
    difference.goes.some(({ requirement }) => requirement === id),
  )
  if (!limit || own.length === 0) return <>no such layer</>
  return own.map(({ id, value, document }) => (
    <span key={id} className="block">
      {limit.direction} <Quantity value={value} unit={limit.unit} figures={6} />, {document}
    </span>
  ))
}

function Decide({
  code,
  difference: { rule, standing, kept },
}: {
  code: string
  difference: RuleDifference
}) {
  const hidden = { programme: code, rule: rule.id, standing }
  const name = `${findLimit(rule.limit)?.label ?? rule.limit}, ${companyRuleName(rule)}`
  return (
    <TakeOrKeep
      kept={kept !== null}
      take={{
        action: takeCompanyRule,
        hidden,
        label: `Take over: ${name}`,
        text: standing === 'withdrawn' ? 'Take the layer off' : 'Take it over',
      }}
      keep={{ action: keepOwnRule, hidden, label: `Keep the programme’s own: ${name}` }}
    />
  )
}
