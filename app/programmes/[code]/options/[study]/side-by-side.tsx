import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable, type RowGroup } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { findingAddress } from '@/app/addresses'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { OptionComparison } from '@/shared/gate/option-outcome'
import type { OptionStudy } from '@/shared/gate/option-study'
import { optionColumns, type OptionRow } from './columns'
import { findingRow } from './finding-row'
import { signatureRows } from './signature-rows'
import { noteRow, valueRow } from './value-row'

interface SideBySideProps {
  view: ProgrammeView
  study: OptionStudy
  comparison: OptionComparison
}

/** The alternatives as columns: their values, what the rules find with each, and what each would undo. */
export function SideBySide({ view, study, comparison }: SideBySideProps) {
  const { parameters, rules, outcomes } = comparison
  const of = (effect: 'turns' | 'moves') =>
    rules.filter((row) => row.effect === effect).map((row) => findingRow(view, row))
  const groups: RowGroup<OptionRow>[] = [
    {
      key: 'values',
      heading: 'What differs',
      rows: [
        ...(outcomes.some(({ alternative }) => alternative.note) ? [noteRow] : []),
        ...parameters.map((key) => valueRow(view, key)),
      ],
    },
    { key: 'turns', heading: 'Findings that turn', rows: of('turns') },
    { key: 'moves', heading: 'Findings that keep their verdict and say something else', rows: of('moves') },
    { key: 'signatures', heading: 'Signatures it would undo', rows: signatureRows(comparison) },
  ]
  return (
    <Section heading="Side by side" lead={leadOf(comparison)}>
      <div className="option-table">
        <RuledTable
          caption="The alternatives side by side"
          captionHidden
          narrow="cards-early"
          columns={optionColumns(study, comparison, true)}
          groups={groups.filter(({ rows }) => rows.length > 0)}
          rowKey={({ key }) => key}
        />
      </div>
      <SameFindings view={view} comparison={comparison} />
    </Section>
  )
}

/** Said in words, so that the table shows only what there is to see. */
function leadOf({ parameters, rules, outcomes }: OptionComparison): string {
  if (parameters.length === 0)
    return 'The alternatives specify the same as today: they differ in what they cost and rest on.'
  const judged = 'Judged by the programme’s rules on today’s records and values.'
  const turning = rules.some(({ effect }) => effect === 'turns')
  const undoing = outcomes.some(({ preview }) => preview.approvals.length + preview.gateSignatures.length > 0)
  return [
    judged,
    ...(turning ? [] : ['No finding turns with any of them.']),
    ...(undoing ? [] : ['No signature rests on what they would change.']),
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
