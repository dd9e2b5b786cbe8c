import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { findingAddress } from '@/app/addresses'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { OptionComparison } from '@/shared/gate/option-outcome'
import type { OptionStudy } from '@/shared/gate/option-study'
import { optionColumns } from './columns'
import { comparedGroups } from './compared-groups'

interface SideBySideProps {
  view: ProgrammeView
  study: OptionStudy
  comparison: OptionComparison
}

/** The alternatives as columns: their values, what the rules find with each, and what each would undo. */
export function SideBySide({ view, study, comparison }: SideBySideProps) {
  return (
    <Section heading="Side by side" lead={comparisonLead(comparison)}>
      <div className="option-table">
        <RuledTable
          caption="The alternatives side by side"
          captionHidden
          narrow="cards-early"
          columns={optionColumns(study, comparison, true)}
          groups={comparedGroups(view, comparison)}
          rowKey={({ key }) => key}
        />
      </div>
      <SameFindings view={view} comparison={comparison} />
    </Section>
  )
}

/** Said in words, so that the table shows only what there is to see. */
export function comparisonLead({ parameters, limits, rules, outcomes }: OptionComparison): string {
  if (parameters.length + limits.length === 0)
    return 'The alternatives specify the same as today: they differ in what they cost and rest on.'
  const judged = 'Judged by the programme’s rules on today’s records and values.'
  const turning = rules.some(({ effect }) => effect === 'turns')
  const lapsing = outcomes.some(({ preview }) => preview.approvals.length + preview.gateSignatures.length > 0)
  return [
    judged,
    ...(turning ? [] : ['No finding turns with any of them.']),
    ...(lapsing ? [] : ['No signature rests on what they would change.']),
  ].join(' ')
}

function SameFindings({ view, comparison }: { view: ProgrammeView; comparison: OptionComparison }) {
  const same = comparison.rules.filter(({ effect }) => effect === 'same')
  if (same.length === 0) return null
  return (
    <Disclosure
      summary={
        same.length === 1
          ? 'One finding reads these values and is the same with every alternative'
          : `${same.length} findings read these values and are the same with every alternative`
      }
    >
      <ul className="option-same">
        {same.map(({ rule, today }) => (
          <li key={rule.id}>
            <a href={findingAddress(view.code, rule.id)}>{rule.title}</a>{' '}
            {today && <VerdictMark verdict={today.verdict} />}
          </li>
        ))}
      </ul>
    </Disclosure>
  )
}
