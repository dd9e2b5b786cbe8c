import { findingAddress } from '@/app/addresses'
import { MarginBar } from '@/app/ui/margin-bar'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ComparedRule } from '@/shared/gate/option-outcome'
import { WANTS_REMEDY, type Finding } from '@/shared/rules/finding'
import type { OptionRow } from './columns'

/** One rule's finding with each alternative; what turns against today is marked. */
export function findingRow(view: ProgrammeView, { rule, today }: ComparedRule): OptionRow {
  return {
    key: rule.id,
    head: <a href={findingAddress(view.code, rule.id)}>{rule.title}</a>,
    today: today && <FindingCell finding={today} />,
    cell: ({ findings }) => {
      const finding = findings.get(rule.id)
      return finding && <FindingCell finding={finding} today={today} />
    },
  }
}

function FindingCell({ finding, today }: { finding: Finding; today?: Finding | undefined }) {
  const { verdict, found, limit, margin, remedy } = finding
  const turned = today !== undefined && today.verdict !== verdict
  return (
    <div className={turned ? 'option-finding option-finding-turned' : 'option-finding'}>
      <p className="option-verdict">
        <VerdictMark verdict={verdict} />
        {turned && <span className="option-turned">turned: {today.verdict} today</span>}
      </p>
      <p>{found}</p>
      {margin ? <MarginBar margin={margin} /> : <p className="finding-limit">Requirement: {limit}</p>}
      {remedy && WANTS_REMEDY[verdict] && (
        <p>
          <strong>Remedy:</strong> {remedy.message}
        </p>
      )}
    </div>
  )
}
