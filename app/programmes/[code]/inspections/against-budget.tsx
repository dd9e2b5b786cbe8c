import { findingAddress, reviseAddress } from '@/app/addresses'
import { DefectRates } from '@/app/drawing/defect-rates'
import { Pareto } from '@/app/drawing/pareto'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { BudgetStatus } from '@/shared/inspection/budget-status'
import { formatNumber } from '@/shared/quantity/format'
import type { DefectFacts } from './defect-facts'

/** Whether what was seen shows the defect rate the specification asks for: all kinds together, and each. */
export function AgainstBudget({ view, facts }: { view: ProgrammeView; facts: DefectFacts }) {
  const { held, confidencePct } = facts
  const finding = view.judgement.findings.get('defects-against-budget')
  const [all, ...kinds] = held
  return (
    <Section
      heading="Against the joint budget"
      aside={finding && <a href={findingAddress(view.code, finding.rule)}>Working and sources</a>}
    >
      {finding && (
        <p className="verdict-line">
          <VerdictMark verdict={finding.verdict} size={28} /> {finding.found}
        </p>
      )}
      {all ? (
        <div className="picture-row">
          <DefectRates
            title="Rates by kind, each bound one-sided and good at every look"
            budget={all.status.budgetPerMillion}
            confidencePct={confidencePct}
            rows={held.map(({ kind, joints, perMillion, interval, status }) => ({
              name: kind,
              joints,
              perMillion,
              ...interval,
              held: inWords(status, kind === all.kind),
            }))}
          />
          {kinds.length > 0 && (
            <Pareto
              title="Defective joints by kind"
              what="joints"
              counts={kinds.map(({ kind, joints }) => ({ name: kind, count: joints }))}
            />
          )}
        </div>
      ) : (
        <Empty title="No rate to hold against a budget yet">
          It needs joints inspected, the hole table, and the{' '}
          <a href={reviseAddress(view.code, 'joint-budget', 'defect-free-boards')}>
            share of boards that shall leave soldering without a defect
          </a>
          .
        </Empty>
      )}
    </Section>
  )
}

function inWords({ status, jointsStillToSee }: BudgetStatus, all: boolean): string {
  switch (status) {
    case 'shown':
      return all ? 'shown' : 'alone it would keep the budget'
    case 'exceeded':
      return all ? 'exceeded' : 'alone it exceeds the budget'
    case 'not shown': {
      const more = `${formatNumber(jointsStillToSee, 12)} more joints without one`
      return all ? `not shown: ${more} would show it` : `alone not shown: ${more}`
    }
  }
}
