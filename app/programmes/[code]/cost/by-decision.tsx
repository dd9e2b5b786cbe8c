import { priced } from '@/app/ui/priced'
import {
  actionAddress,
  actionsAddress,
  optionAddress,
  optionsAddress,
  parameterAddress,
} from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { isKnown, times } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import type { DecisionCost } from '@/shared/cost/decision-costs'
import { processCosts } from '@/shared/plan/parameters/soldering-process'
import { formatNumber } from '@/shared/quantity/format'
import type { Costs } from './costs'
import { ExpectedActual } from './expected-actual'

/** Each decision: what it cost, what it saved, and what would pay for it. */
export function ByDecision({ costs, code }: { costs: Costs; code: string }) {
  const { decisions, named, expected } = costs
  return (
    <Section
      heading="By decision"
      lead="Accepted answers to questions of cost, adopted studies, and sums that name a decision. A study is held against its next best alternative; an answer alone shows only what it has to avoid to pay."
      aside={
        <span className="mark-row">
          <a href={actionsAddress(code)}>Actions</a>
          <a href={optionsAddress(code)}>Studies</a>
        </span>
      }
    >
      {decisions.length === 0 ? (
        <Empty title="No decision carries money yet">
          An accepted answer with an amount, or an adopted study, appears here.
        </Empty>
      ) : (
        <RuledTable
          caption="Decisions"
          captionHidden
          rows={decisions}
          rowKey={({ kind, number }) => `${kind} ${number}`}
          columns={[
            {
              label: 'Decision',
              names: true,
              cell: ({ kind, number, title }) => (
                <a href={kind === 'option study' ? optionAddress(code, number) : actionAddress(code, number)}>
                  {title}
                </a>
              ),
            },
            { label: 'On', set: 'shrink', cell: ({ decidedAt }) => <Day at={decidedAt} /> },
            { label: priced('Per board'), set: 'number', cell: ({ perBoard }) => amountInWords(perBoard) },
            { label: priced('Once'), set: 'number', cell: ({ once }) => amountInWords(once) },
            {
              label: priced('Cost so far'),
              set: 'number',
              cell: ({ costSoFar }) => amountInWords(costSoFar),
            },
            { label: 'Saved so far', cell: (decision) => <Saved decision={decision} /> },
            { label: 'Pays', cell: (decision) => <Pays decision={decision} /> },
          ]}
        />
      )}
      {named.length > 0 && (
        <RuledTable
          caption="Sums that name a decision"
          rows={named}
          rowKey={({ decision }) => decision}
          columns={[
            { label: 'Decision', names: true, cell: ({ decision }) => decision },
            { label: 'Sums', set: 'number', cell: ({ records }) => records },
            { label: 'Amount', set: 'number', cell: ({ amount }) => formatNumber(amount) },
          ]}
        />
      )}
      {expected ? (
        <ExpectedActual expected={expected} />
      ) : (
        <p className="field-hint">
          What rework and repair were to be expected is not said:{' '}
          <a href={parameterAddress(code, processCosts.key)}>the cost table of the processes</a> or the boards
          made are missing.
        </p>
      )}
    </Section>
  )
}

function Saved({ decision: { saved } }: { decision: DecisionCost }) {
  if (!saved) return <>not claimed: nothing to compare with</>
  const { amount, against } = saved
  if (!isKnown(amount)) return <>not known against {against}</>
  if (amount.from >= 0)
    return (
      <>
        {amountInWords(amount)} against {against}
      </>
    )
  if (amount.to <= 0)
    return (
      <>
        {amountInWords(times(amount, -1))} dearer than {against}
      </>
    )
  return (
    <>
      from {formatNumber(-amount.from)} dearer to {formatNumber(amount.to)} saved against {against}
    </>
  )
}

function Pays({ decision }: { decision: DecisionCost }) {
  const { breakEvenBoards, paysAtBoardsPerRework, paysAtBoardsPerRepair } = decision
  const parts = [
    breakEvenBoards !== undefined &&
      (Number.isFinite(breakEvenBoards)
        ? breakEvenBoards === 0
          ? 'from the first board'
          : `from ${formatNumber(Math.ceil(breakEvenBoards))} boards on`
        : 'never, by its costs alone'),
    paysAtBoardsPerRework !== undefined &&
      `if it avoids one rework in ${formatNumber(Math.floor(paysAtBoardsPerRework))} boards`,
    paysAtBoardsPerRepair !== undefined &&
      `or one repair in service in ${formatNumber(Math.floor(paysAtBoardsPerRepair))}`,
  ].filter(Boolean)
  return <>{parts.length > 0 ? parts.join('; ') : '–'}</>
}
